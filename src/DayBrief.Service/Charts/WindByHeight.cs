using System.Text;
using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>What the drawing of the wind by height shows.</summary>
/// <param name="Levels">The heights to show, in any order.</param>
internal sealed record WindByHeightInput(IReadOnlyList<WindLevel> Levels)
{
    public HeightUnit Unit { get; init; }

    public Language Language { get; init; } = Language.English;

    public Figures In => new(Unit, Language);

    public bool SouthernHemisphere { get; init; }

    public double Width { get; init; } = TextStyle.PhoneWidth;
}

/// <summary>The wind at one height.</summary>
/// <param name="HeightM">Metres above the field; 0 is the field.</param>
/// <param name="Wind">The wind; null when not known.</param>
/// <param name="Note">A few words, such as "top of the thermals".</param>
internal sealed record WindLevel(double HeightM, Wind? Wind, string? Note = null);

/// <summary>Wind by height, highest first: a barb, then where from and how fast.</summary>
internal static class WindByHeight
{
    private const double Head = 20;
    private const double Row = 28;
    private const double Feathers = 23;

    private static readonly TextStyle Small = new(TextStyle.Least) { Ink = Ink.Grey };
    private static readonly TextStyle Plain = new(13);

    public static Drawing Draw(WindByHeightInput input)
    {
        var levels = input.Levels.OrderByDescending(level => level.HeightM).ToArray();
        var drawing = new Drawing(
            input.Width, Head + (Row * Math.Max(1, levels.Length)) + 6, input.In["Wind by height"], Describe(input, levels));
        drawing.Text(2, 12, input.In.Say($"{input.Unit.Name()} above the field"), Small);
        if (levels.Length == 0)
            drawing.Text(2, Head + 15, input.In["not known"], Plain);
        for (var i = 0; i < levels.Length; i++)
            DrawRow(drawing, input, levels[i], Head + (Row * i));
        var ground = Head + (Row * levels.Length);
        if (levels.Length > 0 && levels[^1].HeightM <= 0)
            Ground(drawing, ground);
        return drawing;
    }

    internal static string Say(Wind? wind, Figures say) => wind is { } known ? say.Wind(known) : say["not known"];

    private static void DrawRow(Drawing drawing, WindByHeightInput input, WindLevel level, double top)
    {
        var (middle, baseline) = (top + (Row / 2), top + (Row / 2) + 4.5);
        if (top > Head)
            drawing.Line(0, top, input.Width, top, Stroke.Grid);
        var height = level.HeightM <= 0 ? input.In["field"] : input.In.Figure(level.HeightM);
        drawing.Text(52, baseline, height, Plain with { Anchor = Anchor.End });
        if (level.Wind is { } wind)
            Barb(drawing, new(88, middle), wind, input.SouthernHemisphere);
        drawing.Text(124, baseline, Say(level.Wind, input.In), Plain with { Bold = level.Wind is not null });
        if (level.Note is { } note)
            DrawNote(drawing, note, middle);
    }

    /// <summary>In one line or two; a longer note is left to the words.</summary>
    private static void DrawNote(Drawing drawing, string note, double middle)
    {
        const double left = 208;
        var lines = Typeface.Wrap(note, drawing.Width - left - 2, Small.Size);
        if (lines.Count > 2)
            return;
        for (var i = 0; i < lines.Count; i++)
            drawing.Text(left, middle + 4 + (12 * (i - ((lines.Count - 1) / 2.0))), lines[i], Small);
    }

    /// <summary>Its shaft balanced about the middle of the column, so that every direction fits the row.</summary>
    private static void Barb(Drawing drawing, Point middle, Wind wind, bool southern)
    {
        var calm = WindBarb.Feathers(wind.Speed.Knots) == (0, 0, 0);
        var (sin, cos) = Math.SinCos(wind.FromDegrees * Math.PI / 180);
        var back = calm ? 0 : Feathers / 2;
        WindBarb.Draw(drawing, new(middle.X - (back * sin), middle.Y + (back * cos)), wind, Feathers, southern);
    }

    private static void Ground(Drawing drawing, double y)
    {
        drawing.Line(0, y, drawing.Width, y, new Stroke(Ink.Black, 1.2));
        drawing.Hatch([new(0, y), new(drawing.Width, y), new(drawing.Width, y + 5), new(0, y + 5)], 3, 45, new(Ink.Grey, 0.4));
    }

    private static string Describe(WindByHeightInput input, WindLevel[] levels)
    {
        var say = input.In;
        var text = new StringBuilder(say["Wind by height above the field, from the ground up."]);
        if (levels.Length == 0)
            text.Append(' ').Append(say["Not known."]);
        foreach (var level in levels.Reverse())
        {
            var height = level.HeightM <= 0 ? say["At the field"] : say.Text(level.HeightM);
            text.Append(' ').Append(height).Append(": ").Append(Say(level.Wind, say));
            text.Append(level.Note is { } note ? $" ({note})." : ".");
        }

        return text.ToString();
    }
}
