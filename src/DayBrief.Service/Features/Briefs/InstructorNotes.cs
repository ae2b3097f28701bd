namespace DayBrief.Service.Features.Briefs;

/// <summary>What the instructor wrote, by whom it is for.</summary>
internal static class InstructorNotes
{
    public static IEnumerable<(string Title, string Note)> Of(MadeBrief made, Reader reader)
    {
        var inputs = made.Inputs;
        (string Title, string? Note)[] notes =
        [
            (reader["To all"], inputs.InstructorNote),
            (reader["Before first solo"], inputs.Notes?.BeforeSolo),
            (reader["Local solo"], inputs.Notes?.LocalSolo),
            (reader["Cross-country"], inputs.Notes?.CrossCountry),
            (reader["At this field"], inputs.Site.StandingNotes),
            (reader["Emergency"], inputs.Site.EmergencyLine),
        ];
        return notes.Where(note => !string.IsNullOrWhiteSpace(note.Note)).Select(note => (note.Title, note.Note!));
    }
}
