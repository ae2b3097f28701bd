namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Sections 31313 (system and launch time), 41414 (clouds), 51515 … (regional) and 61616 … (national): passed
/// over, so that their groups are not mistaken for levels; the launch time is kept.</summary>
internal static class TempSections
{
    public static void Skip(TempPart part, int start, TempAscent ascent, out int next)
    {
        var section = "";
        var within = 0;
        for (next = start; next < part.Groups.Count && part.Groups[next].Text != "21212"; next++)
        {
            var group = part.Groups[next];
            if (group.OpensSection)
            {
                (section, within) = (group.Text, 0);
            }
            else if (section == "31313" && ++within >= 2 && group.IsWhole && group.Text[0] == '8')
            {
                ascent.LaunchTime ??= Launch(group);
            }
        }
    }

    private static TimeOnly? Launch(TempGroup group) =>
        (group.Number(1, 2), group.Number(3, 2)) is ({ } hour and < 24, { } minute and < 60) ? new(hour, minute) : null;
}
