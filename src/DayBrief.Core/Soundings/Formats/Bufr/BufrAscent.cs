using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Makes an ascent of the values of one subset: what comes before the first pressure tells about the launch, and
/// each pressure begins a level.</summary>
internal sealed class BufrAscent
{
    public const string FormatName = "BUFR";

    private readonly Dictionary<int, BufrValue> _facts = [];
    private readonly Dictionary<int, BufrValue> _level = [];
    private readonly ReadAscent _ascent = new() { Source = new() { Format = FormatName } };
    private BufrValue? _since;

    public static ReadAscent Read(IReadOnlyList<BufrValue> values, DateTimeOffset? messageTime)
    {
        var reading = new BufrAscent();
        foreach (var value in values)
        {
            reading.Take(value);
        }

        reading.CloseLevel();
        return reading.Close(messageTime);
    }

    private void Take(BufrValue value)
    {
        switch (value.Descriptor)
        {
            case 004086:
                CloseLevel();
                _since = value;
                break;
            case 007004 or 007009:
                CloseLevel();
                _level[value.Descriptor] = value;
                break;
            default:
                (_level.Count > 0 ? _level : _facts).TryAdd(value.Descriptor, value);
                break;
        }
    }

    private void CloseLevel()
    {
        if (_level.TryGetValue(007004, out var pressure) && pressure.Number is { } pascals)
        {
            var level = Level(pressure, pascals / 100);
            if (level.HasValue)
            {
                _ascent.Add(level);
            }
        }
        else if (Of(007009) is { } height && Of(011001) is >= 0 and <= 360 and var from && Of(011002) is >= 0 and <= 200 and var speed)
        {
            _ascent.WindsByHeight.Add(new(Altitude.FromMetres(height), Wind.From(from, Speed.FromMetresPerSecond(speed))));
        }

        _level.Clear();
    }

    private ReadLevel Level(BufrValue pressure, double hpa)
    {
        var celsius = (Of(012101) ?? Of(012001)) - Temperature.ZeroCelsius;
        var position = Displaced(Of(005015), Of(006015));
        var since = _since?.Number is { } seconds and >= 0 ? TimeSpan.FromSeconds(seconds) : (TimeSpan?)null;
        _since = null;
        return new(new Origin(ByteOffset: pressure.ByteOffset))
        {
            PressureHpa = hpa,
            HeightM = Of(010009) ?? (Of(010003) / Air.Gravity),
            TemperatureC = celsius,
            DewPointC = ((Of(012103) ?? Of(012003)) - Temperature.ZeroCelsius) ?? Moisture.FromRelative(celsius, Of(013003), new(ByteOffset: pressure.ByteOffset)),
            WindFromDeg = Of(011001),
            WindMs = Of(011002),
            SinceLaunch = since,
            Position = position,
        };
    }

    private ReadAscent Close(DateTimeOffset? messageTime)
    {
        _ascent.Source = _ascent.Source with
        {
            Station = Station(),
            Position = SourceFacts.Position(Fact(005001) ?? Fact(005002), Fact(006001) ?? Fact(006002), At(005001)),
            Elevation = SourceFacts.Elevation(Fact(007030) ?? Fact(007001) ?? Fact(007031), At(007030)),
            ValidAt = Launch() ?? messageTime,
            LaunchTime = Launch() is { } launch ? TimeOnly.FromTimeSpan(launch.TimeOfDay) : null,
        };
        _ascent.WindsByHeight.Sort(static (a, b) => a.Height.CompareTo(b.Height));
        PressureOrder.Sort(_ascent);
        return _ascent;
    }

    private DateTimeOffset? Launch() =>
        (Fact(004001), Fact(004002), Fact(004003), Fact(004004), Fact(004005)) is ({ } year, { } month, { } day, { } hour, var minute)
            ? BufrTime.Of((int)year, (int)month, (int)day, (int)hour, (int)(minute ?? 0), (int)(Fact(004006) ?? 0))
            : null;

    private string? Station() => (Fact(001001), Fact(001002)) is ({ } block, { } number)
        ? $"{(int)block:00}{(int)number:000}"
        : _facts.TryGetValue(001011, out var sign) ? sign.Text : _facts.TryGetValue(001128, out var local) ? local.Text : null;

    private Position? Displaced(double? north, double? east) =>
        (Fact(005001), Fact(006001), north, east) is ({ } latitude, { } longitude, { } dLat, { } dLon)
        && latitude + dLat is >= -90 and <= 90 and var newLatitude && longitude + dLon is >= -180 and <= 180 and var newLongitude
            ? Position.FromDegrees(newLatitude, newLongitude)
            : null;

    private double? Of(int descriptor) => _level.TryGetValue(descriptor, out var value) ? value.Number : null;

    private double? Fact(int descriptor) => _facts.TryGetValue(descriptor, out var value) ? value.Number : null;

    private Origin At(int descriptor) => _facts.TryGetValue(descriptor, out var value) ? new(ByteOffset: value.ByteOffset) : default;
}
