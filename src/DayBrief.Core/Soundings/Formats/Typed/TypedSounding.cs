namespace DayBrief.Soundings.Formats.Typed;

/// <summary>An ascent as somebody types it into a form or sends it as JSON. Plain numbers, because they are not checked
/// yet: <see cref="SoundingReader.Read(TypedSounding)"/> does.</summary>
public sealed record TypedSounding
{
    /// <summary>What to call it.</summary>
    public string? Name { get; init; }

    /// <summary>Station.</summary>
    public string? Station { get; init; }

    /// <summary>Degrees north.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees east.</summary>
    public double? Longitude { get; init; }

    /// <summary>Height of the launch site above mean sea level, m.</summary>
    public double? ElevationM { get; init; }

    /// <summary>The time it is valid for.</summary>
    public DateTimeOffset? ValidAt { get; init; }

    /// <summary>Air pressure at the launch site (QFE), hPa. Needed only where levels have heights and no pressure.</summary>
    public double? SurfacePressureHpa { get; init; }

    /// <summary>Altimeter setting (QNH), hPa; used with the elevation where no QFE is given.</summary>
    public double? QnhHpa { get; init; }

    /// <summary>The levels from the ground up, at least six.</summary>
    public IReadOnlyList<TypedLevel> Levels { get; init; } = [];
}
