using DayBrief.Days;

namespace DayBrief.Service.Features.Sites;

/// <summary>Rows of runways on a site's page: the heading that was not typed is worked out from the variation.</summary>
internal static class RunwayFields
{
    /// <summary>Columns of a row.</summary>
    public static readonly string[] Columns = ["runwayDesignator", "runwayTrue", "runwayMagnetic", "runwaySurface"];

    public static void Put(SiteJson site, Dictionary<string, string?> values)
    {
        foreach (var (runway, row) in (site.Runways ?? []).Select((runway, row) => (runway, row)))
        {
            values[$"runwayDesignator-{row}"] = runway.Designator;
            values[$"runwayTrue-{row}"] = SiteUnitsTyped.Number(runway.HeadingDeg, 1);
            values[$"runwayMagnetic-{row}"] = SiteUnitsTyped.Number(
                runway.HeadingMagneticDeg ?? (runway.HeadingDeg is { } heading && site.MagneticVariationDeg is { } variation ? MagneticHeading.OfTrue(heading, variation) : null), 1);
            values[$"runwaySurface-{row}"] = runway.Surface;
        }
    }

    /// <summary>The rows that are filled, with their numbers on the page.</summary>
    public static IReadOnlyList<(int Row, RunwayJson Runway)> Read(SiteFields fields, SiteFields before, double? variation, TypedNumbers numbers)
    {
        var rows = new List<(int Row, RunwayJson Runway)>();
        for (var row = 0; row < fields.RunwayRows; row++)
        {
            if (Columns.All(column => fields[$"{column}-{row}"].Length == 0))
                continue;
            var heading = numbers.Plain($"runwayTrue-{row}");
            var magnetic = numbers.Plain($"runwayMagnetic-{row}");
            bool Changed(string column) => fields[$"{column}-{row}"] != before[$"{column}-{row}"];
            if (variation is { } east)
                (heading, magnetic) = WorkedOut(heading, magnetic, Changed("runwayTrue"), Changed("runwayMagnetic"), fields["variation"] != before["variation"], east);
            rows.Add((row, new(fields.NullIfEmpty($"runwayDesignator-{row}"), heading, fields.NullIfEmpty($"runwaySurface-{row}"), magnetic)));
        }

        return rows;
    }

    /// <summary>What was changed decides; where both were, they stay as typed and are checked against each other.</summary>
    private static (double? Heading, double? Magnetic) WorkedOut(
        double? heading, double? magnetic, bool headingChanged, bool magneticChanged, bool variationChanged, double east)
    {
        if (magnetic is { } compass && (heading is null || (magneticChanged && !headingChanged)))
            return (Math.Round(MagneticHeading.ToTrue(compass, east), 1), magnetic);
        return heading is { } typed && (magnetic is null || (headingChanged && !magneticChanged) || (variationChanged && !headingChanged && !magneticChanged))
            ? (heading, Math.Round(MagneticHeading.OfTrue(typed, east), 1))
            : (heading, magnetic);
    }
}
