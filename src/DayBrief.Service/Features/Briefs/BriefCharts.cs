using DayBrief.Days;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The brief's pictures, drawn from its figures for a phone's width or the sheet's.</summary>
internal static class BriefCharts
{
    /// <param name="made">The brief.</param>
    /// <param name="reader">Who reads.</param>
    /// <param name="width">Width of the drawing.</param>
    /// <param name="height">Its height.</param>
    /// <param name="now">When it is looked at, to be marked; null for what is kept or printed.</param>
    public static Drawing Day(MadeBrief made, Reader reader, double width = TextStyle.PhoneWidth, double height = 250, DateTimeOffset? now = null)
    {
        var (brief, day) = (made.Brief, made.Brief.Day);
        var band = day.UsableTopBand;
        return DayPicture.Draw(new()
        {
            Moments =
            [
                .. day.Steps.Select((step, i) => new DayMoment(
                    TimeOf(step.Time),
                    DayFigures.UsableTopAt(brief, step),
                    i < band.Length && band[i].P90 > 0 ? band[i].P10 : null,
                    i < band.Length && band[i].P90 > 0 ? band[i].P90 : null,
                    step.CloudBaseAglM,
                    step.CloudTopAglM)),
            ],
            Sunrise = day.Sun.Sunrise is { } rise ? TimeOf(rise) : null,
            Sunset = day.Sun.Sunset is { } set ? TimeOf(set) : null,
            FreezingLevelM = brief.FreezingLevel?.Metres,
            CeilingM = brief.Site.Limits.Ceiling is { } ceiling ? (ceiling - brief.Site.Elevation).Metres : null,
            JudgedTopM = made.Inputs.Judgement?.UsableTopAglM,
            KeyTimes = [.. KeyTimesOf(DayFigures.Of(made), reader)],
            Now = NowOf(brief, now),
            Unit = reader.Drawn,
            Language = reader.Language,
            Width = width,
            Height = height,
        });
    }

    public static Drawing Ascent(Brief brief, Reader reader, double width = TextStyle.PhoneWidth) => Tephigram.Draw(new()
    {
        Analysis = brief.Ascent,
        Stages = [.. Stages(brief, reader)],
        DayTop = brief.Day.MaxDepth,
        FieldAboveAscentM = brief.FieldAboveAscentM,
        Unit = reader.Drawn,
        Language = reader.Language,
        SouthernHemisphere = brief.Site.Position.LatitudeDegrees < 0,
        Width = width,
    });

    public static Drawing Winds(Brief brief, Reader reader, double width = TextStyle.PhoneWidth) => WindByHeight.Draw(
        new([.. WindTable.Rows(brief, reader).Select(row => new WindLevel(row.Height.Metres, row.Wind))])
        {
            Unit = reader.Drawn,
            Language = reader.Language,
            SouthernHemisphere = brief.Site.Position.LatitudeDegrees < 0,
            Width = width,
        });

    /// <summary>On the day of the brief only.</summary>
    private static TimeOnly? NowOf(Brief brief, DateTimeOffset? now) =>
        now is { } at && LocalClock.DateAt(at, brief.Site.TimeZone) == brief.Date
            ? TimeOf(TimeZoneInfo.ConvertTime(at, brief.Site.TimeZone))
            : null;

    private static TimeOnly TimeOf(DateTimeOffset local) => TimeOnly.FromTimeSpan(local.TimeOfDay);

    private static IEnumerable<KeyTime> KeyTimesOf(DayFigures times, Reader reader)
    {
        if (times.TriggerTime is { } trigger)
            yield return new(TimeOf(trigger), reader["trigger [before a time]"]);
        if (times.FirstUsable is { } first && first != times.TriggerTime)
            yield return new(TimeOf(first), reader["first [usable thermal, before a time]"]);
        if (times.Last is { } last)
            yield return new(TimeOf(last), reader["last [usable thermal, before a time]"]);
    }

    /// <summary>The stirred layer's temperature at the ground, at the trigger, at 13 h local time and at its highest.</summary>
    private static IEnumerable<HeatingStage> Stages(Brief brief, Reader reader)
    {
        var warm = brief.Day.Steps.Where(step => step.MixedLayerThetaK is not null).ToArray();
        if (warm.Length == 0)
            yield break;
        var hottest = warm.MaxBy(step => step.MixedLayerThetaK)!;
        var trigger = warm.FirstOrDefault(step => step.Time >= brief.Day.Times.TriggerTime);
        var chosen = new[] { trigger, warm.FirstOrDefault(step => step.Time.Hour == 13), hottest }
            .OfType<DayStep>().Where(step => step.Time <= hottest.Time).DistinctBy(step => step.Time).OrderBy(step => step.Time);
        foreach (var step in chosen)
            yield return new(AtGround(brief, step.MixedLayerThetaK!.Value), reader.Time(step.Time), step.SurfaceTemperatureC);
    }

    private static Temperature AtGround(Brief brief, double thetaKelvins) => Thermodynamics.DryAdiabat.Moved(
        Temperature.FromKelvins(thetaKelvins), Pressure.FromHectopascals(1000), brief.Ascent.Profile.SurfacePressure);
}
