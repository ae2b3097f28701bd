using System.Diagnostics.CodeAnalysis;
using DayBrief.Reports;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The report that counts among those given with a brief.</summary>
internal static class ReportsOfDay
{
    /// <exception cref="InvalidInputException">The text holds no report, or of several stations none is known to be the field's.</exception>
    public static AerodromeReport? Observation(BriefInputs inputs) => Chosen(
        "observation", inputs.Observation, inputs, MetarReader.ReadAll, MetarReader.Read, ReportChoice.Observation, report => report.Station);

    /// <exception cref="InvalidInputException">As <see cref="Observation"/>.</exception>
    public static AerodromeForecast? Forecast(BriefInputs inputs) => Chosen(
        "forecast", inputs.Forecast, inputs, TafReader.ReadAll, TafReader.Read, ReportChoice.Forecast, forecast => forecast.Station);

    /// <summary>What is known of the field for the choice.</summary>
    public static ReportPlace Place(BriefInputs inputs) => new()
    {
        Station = inputs.ReportStation,
        Near = new DateTimeOffset(inputs.Date, new TimeOnly(12, 0), TimeSpan.Zero),
    };

    [SuppressMessage("Maintainability", "CA1508", Justification = "Read throws where ReadAll finds nothing.")]
    private static T? Chosen<T>(
        string field, string? text, BriefInputs inputs, Func<string, IReadOnlyList<T>> all, Func<string, T> first,
        Func<IEnumerable<T>, ReportPlace, ReportChoice<T>> choose, Func<T, string> station)
        where T : class
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        try
        {
            var reports = all(text);
            var choice = choose(reports.Count > 0 ? reports : [first(text)], Place(inputs));
            return choice.NotUsed.Any(entry => entry.Reason == ReportNotUsedReason.StationNotNamed)
                ? throw Unnamed(field, choice.NotUsed.Select(entry => station(entry.Report)))
                : choice.Used;
        }
        catch (InvalidReportException refused)
        {
            throw new InvalidInputException(new ProblemError(refused.Words, "not-a-report", refused.Line, refused.Group, field));
        }
    }

    private static InvalidInputException Unnamed(string field, IEnumerable<string> stations) => new(new ProblemError(
        Words.Of($"The text holds reports of {string.Join(", ", stations.Distinct())}, and which of them reports for the field is not known. Name it on the site's page, or give the reports of one station."),
        "station-not-named",
        null,
        null,
        field));
}
