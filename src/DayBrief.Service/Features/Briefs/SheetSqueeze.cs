namespace DayBrief.Service.Features.Briefs;

/// <summary>How far the words of a crowded sheet give way. Never the limits of the day, nor the worst cautions and their times.</summary>
internal sealed record SheetSqueeze
{
    /// <summary>Least height of the picture of the day, below which it would say nothing; null for a sheet without it.</summary>
    public double? Picture { get; init; } = 190;

    /// <summary>Lines of each note.</summary>
    public int NoteLines { get; init; } = 6;

    /// <summary>What stands in the site's own notes every day is on the sheet.</summary>
    public bool StandingNotes { get; init; } = true;

    /// <summary>Lines of METAR and TAF as they came.</summary>
    public int ReportLines { get; init; } = 6;

    /// <summary>How many facts of field and air, the most wanted first.</summary>
    public int Facts { get; init; } = 12;

    /// <summary>How much is said of the serious cautions.</summary>
    public DangerWords Dangers { get; init; }

    /// <summary>Clauses of the day's sentence after the thermals; what they say stands among the cautions below, too.</summary>
    public int Clauses { get; init; } = DecidingWords.Most;

    /// <summary>Sentences of each other caution; none for its name alone.</summary>
    public int OtherSentences { get; init; } = 2;

    /// <summary>Facts and other cautions in columns; else in lines, the most wanted facts and the names of the cautions.</summary>
    public bool Columns { get; init; } = true;

    /// <summary>Lines of their names, where they do not stand in columns.</summary>
    public int OtherLines { get; init; } = 4;

    /// <summary>Height of a row to write in.</summary>
    public double StripRow { get; init; } = 19;

    /// <summary>Size of the line on whom to call.</summary>
    public double Emergency { get; init; } = 11;

    /// <summary>From plenty of room to none; what is least needed at the launch point goes first.</summary>
    public static IReadOnlyList<SheetSqueeze> Steps { get; } = Ladder();

    private static List<SheetSqueeze> Ladder()
    {
        var steps = new List<SheetSqueeze> { new() };
        void Next(Func<SheetSqueeze, SheetSqueeze> less) => steps.Add(less(steps[^1]));
        Next(last => last with { Picture = 165, NoteLines = 5 });
        Next(last => last with { Picture = 150, OtherSentences = 1 });
        Next(last => last with { ReportLines = 3, StripRow = 17.5, NoteLines = 4 });
        Next(last => last with { Picture = 135, Facts = 7 });
        Next(last => last with { ReportLines = 2, NoteLines = 3 });
        Next(last => last with { StripRow = 16, ReportLines = 0, Picture = 120 });
        Next(last => last with { OtherSentences = 0, Facts = 6 });
        Next(last => last with { NoteLines = 2, Picture = 110 });
        Next(last => last with { StripRow = 15, Facts = 5 });
        Next(last => last with { Dangers = DangerWords.Lines, Picture = 100 });
        Next(last => last with { Clauses = 4 });
        Next(last => last with { NoteLines = 1, Facts = 4 });
        Next(last => last with { Columns = false, Facts = 3 });
        Next(last => last with { StandingNotes = false, Facts = 2 });
        Next(last => last with { Clauses = 3, Dangers = DangerWords.RunOn });
        Next(last => last with { Facts = 1, OtherLines = 2, Picture = 92 });
        Next(last => last with { Dangers = DangerWords.Named, OtherLines = 1 });
        Next(last => last with { Clauses = 2, Picture = 84 });
        Next(last => last with { Picture = null, Clauses = 3, Dangers = DangerWords.RunOn, Facts = 3, OtherLines = 3 });
        Next(last => last with { Dangers = DangerWords.Named });
        Next(last => last with { Clauses = 2, Facts = 1, OtherLines = 1 });
        Next(last => last with { Emergency = 10 });
        Next(last => last with { Facts = 0 });
        Next(last => last with { Clauses = 1, Facts = 1 });
        return steps;
    }
}
