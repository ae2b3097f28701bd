using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

/// <summary>Generic gliders for the classes.</summary>
/// <remarks>Invented round numbers of the right size for each class (no source); no type's polar. A pilot who has the
/// handbook enters three points instead.</remarks>
public static class GenericGlider
{
    /// <summary>The generic glider of a class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such class.</exception>
    public static Glider Of(GliderClass gliderClass) => gliderClass switch
    {
        GliderClass.EarlyTrainer => Make("early training two-seater", (68, 0.98), (80, 1.10), (110, 2.20), 56, 25, 5.0),
        GliderClass.Trainer => Make("training two-seater", (80, 0.74), (105, 0.92), (150, 2.05), 67, 32, 4.4),
        GliderClass.Club => Make("club single-seater", (76, 0.66), (100, 0.80), (150, 1.95), 64, 31, 3.6),
        GliderClass.Standard => Make("15 m single-seater", (80, 0.62), (110, 0.85), (150, 1.75), 66, 34, 3.4),
        GliderClass.Open => Make("18 m and larger", (82, 0.50), (110, 0.66), (160, 1.55), 68, 37, 4.6),
        _ => throw new ArgumentOutOfRangeException(nameof(gliderClass), gliderClass, "No such class."),
    };

    /// <summary>The class's name in requests and results: <c>early-trainer</c>, <c>trainer</c>, <c>club</c>, <c>standard</c>, <c>open</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such class.</exception>
    public static string NameOf(GliderClass gliderClass) => gliderClass switch
    {
        GliderClass.EarlyTrainer => "early-trainer",
        GliderClass.Trainer => "trainer",
        GliderClass.Club => "club",
        GliderClass.Standard => "standard",
        GliderClass.Open => "open",
        _ => throw new ArgumentOutOfRangeException(nameof(gliderClass), gliderClass, "No such class."),
    };

    /// <summary>The class of a name, null if there is none of that name.</summary>
    public static GliderClass? Named(string? name) =>
        Enum.GetValues<GliderClass>().Cast<GliderClass?>().FirstOrDefault(each => NameOf(each!.Value) == name);

    private static Glider Make(
        string name, (double Kmh, double Sink) slow, (double Kmh, double Sink) middle, (double Kmh, double Sink) fast, double stallKmh, double loading, double rollS) =>
        new(name, Polar.Through(Point(slow), Point(middle), Point(fast)), Speed.FromKilometresPerHour(stallKmh), loading, rollS);

    private static (Speed Speed, Speed Sink) Point((double Kmh, double Sink) point) =>
        (Speed.FromKilometresPerHour(point.Kmh), Speed.FromMetresPerSecond(point.Sink));
}
