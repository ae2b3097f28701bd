using System.Globalization;
using DayBrief.Days;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;
using Microsoft.AspNetCore.WebUtilities;

namespace DayBrief.Service.Features.Technique;

/// <summary>The variometers to choose from.</summary>
internal enum VarioChoice
{
    /// <summary>Electronic, 1 s, audio.</summary>
    Quick,

    /// <summary>Electronic, 2 s, audio.</summary>
    Usual,

    /// <summary>Mechanical, 3 s, needle.</summary>
    Slow,
}

/// <summary>Who asks for advice: glider, instrument, experience. Part of the link, remembered on the phone.</summary>
internal sealed record Pilot
{
    /// <summary>The cookie that remembers the choice.</summary>
    public const string Cookie = "daybrief-pilot";

    public GliderClass Glider { get; init; } = GliderClass.Trainer;

    public VarioChoice Instrument { get; init; } = VarioChoice.Usual;

    public Experience Experience { get; init; } = Experience.LocalSolo;

    /// <summary>Three points of the pilot's own polar and its stall speed, as written; null for the class's.</summary>
    public string? Polar { get; init; }

    public Variometer Variometer => Instrument switch
    {
        VarioChoice.Quick => Variometer.Quick,
        VarioChoice.Slow => Variometer.Slow,
        _ => Variometer.Usual,
    };

    /// <summary>The choice as part of a link.</summary>
    public string Query =>
        $"glider={GenericGlider.NameOf(Glider)}&instrument={Choice.NameOf(Instrument)}&experience={Choice.NameOf(Experience)}"
        + (Polar is null ? "" : $"&polar={Uri.EscapeDataString(Polar)}");

    /// <summary>Whether somebody has chosen, in the link or before on this phone.</summary>
    public static bool IsKnown(HttpRequest request) => request.Query.ContainsKey("experience") || request.Cookies.ContainsKey(Cookie);

    /// <summary>From the link, else from what the phone remembers, else the default.</summary>
    public static Pilot Of(HttpRequest request)
    {
        var asked = request.Query.ContainsKey("glider") || request.Query.ContainsKey("instrument") || request.Query.ContainsKey("experience");
        var kept = QueryHelpers.ParseQuery(request.Cookies[Cookie]);
        string? Value(string name) =>
            (asked ? request.Query[name] : kept.GetValueOrDefault(name)).ToString() is { Length: > 0 } text ? text.Trim() : null;
        var standard = new Pilot();
        return new()
        {
            Glider = GenericGlider.Named(Value("glider")) ?? standard.Glider,
            Instrument = Choice.Parse<VarioChoice>(Value("instrument")) ?? standard.Instrument,
            Experience = Choice.Parse<Experience>(Value("experience")) ?? standard.Experience,
            Polar = Value("polar"),
        };
    }

    /// <summary>The pilot's own glider from three points "80:0.62 110:0.85 150:1.75" (km/h : m/s); the class's when none is
    /// given.</summary>
    /// <exception cref="InvalidInputException">The points make no polar.</exception>
    public Glider OwnGlider()
    {
        var generic = GenericGlider.Of(Glider);
        if (Polar is null)
            return generic;
        var points = Polar.Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries).Select(Point).ToArray();
        if (points.Length != 3)
            throw InvalidInputException.Field("polar", "Three points are needed, such as 80:0.62 110:0.85 150:1.75 (km/h : m/s).");
        try
        {
            return new Glider("own polar", Flight.Gliders.Polar.Through(points[0], points[1], points[2]), generic.Stall, generic.WingLoadingKgM2, generic.RollS);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw InvalidInputException.Field("polar", "No polar passes through these points with the class's stall speed; check speeds (km/h) and sinks (m/s).");
        }
    }

    private static (Speed Speed, Speed Sink) Point(string text)
    {
        var parts = text.Replace(',', '.').Split(':');
        return parts.Length == 2
            && double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var kmh)
            && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var sink)
            && kmh is > 30 and < 300 && sink is > 0 and < 10
                ? (Speed.FromKilometresPerHour(kmh), Speed.FromMetresPerSecond(sink))
                : throw InvalidInputException.Field("polar", $"\"{text}\" is not a point such as 80:0.62 (km/h : m/s).");
    }
}
