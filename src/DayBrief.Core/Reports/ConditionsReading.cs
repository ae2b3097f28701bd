using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>Takes the groups that reports and forecasts share, one by one.</summary>
internal sealed class ConditionsReading
{
    private readonly List<PresentWeather> _weather = [];
    private readonly List<CloudLayer> _clouds = [];
    private AerodromeConditions _conditions = new();

    public AerodromeConditions Result => _conditions with { Weather = [.. _weather], Clouds = [.. _clouds] };

    /// <summary>Whether wind is stated already: a second one is of another time or report.</summary>
    public bool HasWind => _conditions.Wind is not null;

    public bool HasVisibility => _conditions.Visibility is not null || _conditions.IsCavok;

    public bool HasClouds => _clouds.Count > 0 || _conditions.IsCavok || _conditions.IsObscured;

    /// <summary>Cloud, vertical visibility, or a word for the sky or the end of weather.</summary>
    public static bool IsSky(string group) =>
        group is "CAVOK" or "NSW" or "SKC" or "CLR" or "NSC" or "NCD"
        || GroupShapes.Cloud().IsMatch(group) || GroupShapes.VerticalVisibility().IsMatch(group);

    /// <summary>False if the group is none of these, or states once more what was stated.</summary>
    public bool Take(string group) =>
        Word(group)
        || Wind(group)
        || Distance(group)
        || Cloud(group)
        || Weather(group);

    private bool Word(string group)
    {
        switch (group)
        {
            case "CAVOK":
                _conditions = _conditions with { IsCavok = true };
                return true;
            case "NSW":
                _conditions = _conditions with { NoSignificantWeather = true };
                return true;
            case "SKC" or "CLR":
                _clouds.Add(new(CloudAmount.Clear, null, null));
                return true;
            case "NSC":
                _clouds.Add(new(CloudAmount.NilSignificant, null, null));
                return true;
            case "NCD":
                _clouds.Add(new(CloudAmount.NoneDetected, null, null));
                return true;
            default:
                return group is "//" or "////" or "//////" or "/////////";
        }
    }

    private bool Wind(string group)
    {
        if (GroupShapes.Varying().Match(group) is { Success: true } varying && _conditions.Wind is { } wind)
        {
            _conditions = _conditions with
            {
                Wind = wind with { VariesFromDegrees = Number(varying.Groups[1]), VariesToDegrees = Number(varying.Groups[2]) },
            };
            return true;
        }

        if (HasWind || GroupShapes.Wind().Match(group) is not { Success: true } match || Number(match.Groups[1]) > 360)
        {
            return false;
        }

        var unit = match.Groups[4].Value;
        _conditions = _conditions with
        {
            Wind = new()
            {
                FromDegrees = Number(match.Groups[1]),
                IsVariable = match.Groups[1].Value == "VRB",
                Speed = SpeedOf(Number(match.Groups[2]), unit),
                Gust = SpeedOf(Number(match.Groups[3]), unit),
            },
        };
        return true;
    }

    private bool Distance(string group)
    {
        if (VisibilityGroup.Read(group) is not var (seen, inDirection))
        {
            return false;
        }

        if (_conditions.Visibility is null && !inDirection)
        {
            _conditions = _conditions with { Visibility = seen };
            return true;
        }

        // Directions may come two or three; the worst counts. Without one before, it is all that is known.
        if (_conditions.Visibility is null)
        {
            _conditions = _conditions with { Visibility = seen };
        }
        else if (_conditions.LowestVisibility is not { } known || seen.Metres < known.Metres)
        {
            _conditions = _conditions with { LowestVisibility = seen };
        }

        return true;
    }

    private bool Cloud(string group)
    {
        if (GroupShapes.VerticalVisibility().Match(group) is { Success: true } obscured)
        {
            _conditions = _conditions with { IsObscured = true, VerticalVisibility = HeightOf(obscured.Groups[1]) };
            return true;
        }

        if (GroupShapes.Cloud().Match(group) is not { Success: true } match)
        {
            return false;
        }

        _clouds.Add(new(AmountOf(match.Groups[1].Value), HeightOf(match.Groups[2]), match.Groups[3].Value switch
        {
            "CB" => ConvectiveCloud.Cumulonimbus,
            "TCU" => ConvectiveCloud.ToweringCumulus,
            _ => null,
        }));
        return true;
    }

    private bool Weather(string group)
    {
        var weather = WeatherCode.Read(group);
        _weather.AddRange(weather);
        return weather.Count > 0;
    }

    private static CloudAmount AmountOf(string code) => code switch
    {
        "FEW" => CloudAmount.Few,
        "SCT" => CloudAmount.Scattered,
        "BKN" => CloudAmount.Broken,
        "OVC" => CloudAmount.Overcast,
        _ => CloudAmount.NotKnown,
    };

    private static Height? HeightOf(Group hundreds) =>
        Number(hundreds) is { } feet ? Height.FromFeet(100 * feet) : null;

    private static Speed? SpeedOf(double? value, string unit) => (value, unit) switch
    {
        (null, _) => null,
        ({ } knots, "KT" or "KTS") => Speed.FromKnots(knots),
        ({ } ms, "MPS") => Speed.FromMetresPerSecond(ms),
        ({ } kmh, _) => Speed.FromKilometresPerHour(kmh),
    };

    private static double? Number(Group group) =>
        int.TryParse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;
}
