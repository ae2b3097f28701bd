using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What the instructor wrote, by whom it is for.</summary>
/// <remarks>A reader who has said which group is his gets its note only; one who has not gets all, so that none is missed.</remarks>
internal static class InstructorNotes
{
    public static IEnumerable<(string Title, string Note)> Of(MadeBrief made, Reader reader, Experience? group = null)
    {
        var inputs = made.Inputs;
        (string Title, string? Note)[] notes =
        [
            (reader["To all"], inputs.InstructorNote),
            (reader["Before first solo"], For(Experience.BeforeSolo, inputs.Notes?.BeforeSolo)),
            (reader["Local solo"], For(Experience.LocalSolo, inputs.Notes?.LocalSolo)),
            (reader["Cross-country"], For(Experience.CrossCountry, inputs.Notes?.CrossCountry)),
            (reader["At this field"], inputs.Site.StandingNotes),
            (reader["Emergency"], inputs.Site.EmergencyLine),
        ];
        return notes.Where(note => !string.IsNullOrWhiteSpace(note.Note)).Select(note => (note.Title, note.Note!));

        string? For(Experience whose, string? note) => group is null || group == whose ? note : null;
    }
}
