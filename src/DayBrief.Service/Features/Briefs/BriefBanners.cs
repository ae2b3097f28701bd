namespace DayBrief.Service.Features.Briefs;

/// <summary>What must be seen before anything else.</summary>
internal sealed record Banner(string Text, bool IsWarning);

internal static class BriefBanners
{
    /// <summary>Older than this at sunrise, an ascent no longer stands for the morning. Common practice, no source.</summary>
    private static readonly TimeSpan StaleAfter = TimeSpan.FromHours(12);

    public static IEnumerable<Banner> Of(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        var brief = made.Brief;
        if (made.Inputs.Demonstration)
        {
            yield return new(reader["Demonstration: field, ascent and day are invented."], IsWarning: false);
        }
        else
        {
            var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, brief.Site.TimeZone).DateTime);
            if (brief.Date != today)
                yield return new(reader.Say($"Not for today: this is the brief for {reader.Date(brief.Date)}."), IsWarning: true);
        }

        if (brief.AscentAgeAt(brief.Day.Sun.Sunrise ?? brief.Day.Sun.Noon) is { } age && age > StaleAfter)
            yield return new(reader.Say($"Old ascent: it was made {reader.Duration(age)} before sunrise, {reader.DateAndTime(brief.AscentValidAt!.Value)}."), IsWarning: true);
    }
}
