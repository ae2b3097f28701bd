using System.Text.Json.Serialization;
using DayBrief.Scores;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Verifying;

/// <summary>What was told, what came true, and how far apart they are; SI, heights above the field, times as minutes after local midnight.</summary>
internal sealed record VerificationJson(
    IReadOnlyList<VerifiedDayJson> Days, IReadOnlyDictionary<string, ScoreJson> Scores, IReadOnlyList<string> NotUsed)
{
    public static VerificationJson Of(IReadOnlyList<VerifiedDay> days, IReadOnlyList<string> notUsed) => new(
        [.. days.Select(day => new VerifiedDayJson(
            day.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            day.Figures.ToDictionary(figure => figure.Name, figure => Rounded(figure.Name, figure.Told?.Value)),
            day.Figures.Where(figure => figure.Told?.P10 is not null).ToDictionary(
                figure => figure.Name, figure => new RangeJson(Rounded(figure.Name, figure.Told?.P10), Rounded(figure.Name, figure.Told?.P90))),
            day.Figures.ToDictionary(figure => figure.Name, figure => Rounded(figure.Name, figure.True)),
            day.Problem))],
        days.SelectMany(day => day.Figures)
            .Where(figure => figure is { Told: not null, True: not null })
            .GroupBy(figure => figure.Name)
            .ToDictionary(name => name.Key, name => ScoreJson.Of(Score.Of([.. name.Select(figure => (figure.Told!.Value, figure.True!.Value))])!)),
        notUsed);

    private static double? Rounded(string name, double? value) => Json.Rounded(value, name == "climbMs" ? 3 : 1);
}

/// <param name="Date">The local date.</param>
/// <param name="Told">The middle of what the computed day tells.</param>
/// <param name="Ranges">The range that holds eight cases of ten.</param>
/// <param name="True">What came true.</param>
/// <param name="Problem">Why the day, or one of its files, could not be used.</param>
internal sealed record VerifiedDayJson(
    string Date,
    IReadOnlyDictionary<string, double?> Told,
    IReadOnlyDictionary<string, RangeJson> Ranges,
    [property: JsonPropertyName("true")] IReadOnlyDictionary<string, double?> True,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Problem);

internal sealed record RangeJson(double? P10, double? P90);

internal sealed record ScoreJson(int N, double? Bias, double? Mae, double? ParcelMae, double? ClimatologyMae, double? InRangePct, double? Crps)
{
    public static ScoreJson Of(Score score) => new(
        score.N,
        Json.Rounded(score.Bias, 3),
        Json.Rounded(score.Mae, 3),
        Json.Rounded(score.ParcelMae, 3),
        Json.Rounded(score.ClimatologyMae, 3),
        Json.Rounded(score.InRangePct, 1),
        Json.Rounded(score.Crps, 3));
}
