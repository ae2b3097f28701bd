using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>Takes the groups that reports and forecasts share, one by one.</summary>
internal sealed class ConditionsReading
{
    private const double MetresPerMile = 1609.344;

    private readonly List<PresentWeather> _weather = [];
    private readonly List<CloudLayer> _clouds = [];
    private AerodromeConditions _conditions = new();
    private int? _wholeMiles;

    public AerodromeConditions Result => _conditions with { Weather = [.. _weather], Clouds = [.. _clouds] };

    /// <summary>False if the group is none of these.</summary>
    public bool Take(string group, string? next) =>
        Word(group)
        || Wind(group)
        || Distance(group, next)
        || Cloud(group)
        || WeatherGroup(group);

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

        if (GroupShapes.Wind().Match(group) is not { Success: true } match || Number(match.Groups[1]) > 360)
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

    private bool Distance(string group, string? next)
    {
        if (GroupShapes.Metres().Match(group) is { Success: true } metres)
        {
            var seen = metres.Groups[1].Value == "9999" ? new Visibility(10_000, IsOrMore: true) : new Visibility(Number(metres.Groups[1])!.Value);
            _conditions = _conditions.Visibility is null ? _conditions with { Visibility = seen } : _conditions with { LowestVisibility = seen };
            return true;
        }

        if (group.Length == 1 && char.IsAsciiDigit(group[0]) && next is not null && GroupShapes.Miles().IsMatch(next))
        {
            _wholeMiles = group[0] - '0';
            return true;
        }

        if (GroupShapes.Miles().Match(group) is not { Success: true } miles || Number(miles.Groups[3]) == 0)
        {
            return false;
        }

        var distance = (Number(miles.Groups[2])!.Value / (Number(miles.Groups[3]) ?? 1)) + (_wholeMiles ?? 0);
        _wholeMiles = null;
        _conditions = _conditions with
        {
            Visibility = new(distance * MetresPerMile, miles.Groups[1].Value == "P", miles.Groups[1].Value == "M"),
        };
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

    private bool WeatherGroup(string group)
    {
        if (GroupShapes.Weather().Match(group) is not { Success: true } match
            || (match.Groups[2].Length == 0 && match.Groups[3].Length == 0))
        {
            return false;
        }

        var lead = match.Groups[1].Value;
        var codes = match.Groups[3].Value;
        _weather.Add(new(
            group,
            lead is "+" or "-" ? lead : "",
            lead == "VC",
            match.Groups[2].Length > 0 ? match.Groups[2].Value : null,
            [.. Enumerable.Range(0, codes.Length / 2).Select(i => codes.Substring(2 * i, 2))]));
        return true;
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
        ({ } knots, "KT") => Speed.FromKnots(knots),
        ({ } ms, "MPS") => Speed.FromMetresPerSecond(ms),
        ({ } kmh, _) => Speed.FromKilometresPerHour(kmh),
    };

    private static double? Number(Group group) =>
        int.TryParse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;
}
