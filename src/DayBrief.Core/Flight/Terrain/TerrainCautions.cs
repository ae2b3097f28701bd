using DayBrief.Texts;

namespace DayBrief.Flight.Terrain;

/// <summary>The ground under the thermals of a site.</summary>
public enum TerrainKind
{
    /// <summary>Flat or gently rolling.</summary>
    Flat,

    /// <summary>Hills and ridges.</summary>
    Hills,

    /// <summary>Mountains and valleys.</summary>
    Mountains,
}

/// <summary>What changes in hills and mountains; general trade knowledge without a source, never in place of the local instructor.</summary>
public static class TerrainCautions
{
    private static readonly TerrainCaution[] Hills =
    [
        new("defer-local", "What the local mountain instructor says goes before anything here."),
        new("no-turn-to-slope", "Never turn towards the slope. Below the ridge fly figures of eight, every turn away from the hill."),
        new("height-before-circling", "Circle only when well above the ridge: the whole circle, with its drift and a mistake, must clear the hill."),
        new("speed-near-slope", "Keep more speed near the slope than in a free thermal; gusts and sink there leave no height to recover."),
        new("drift-into-lee", "A circle drifts with the wind; watch that it does not carry you over the ridge into the sink behind it."),
    ];

    private static readonly TerrainCaution[] Mountains =
    [
        new("narrow-broken", "Thermals near rock are narrow and broken: the figures for a smooth round thermal are too hopeful there."),
        new("valley-wind", "The valley wind sets in during the day and turns in the evening; it shifts the thermals up the slopes and the landing wind."),
        new("way-out", "Keep a way out downhill to a field you can reach, with height in hand for the sink on the way."),
        new("true-speed", "High up the true speed and so the circle is larger at the same indicated speed: about 5 % of speed for 1000 m, 10 % of radius."),
    ];

    /// <summary>The cautions of a kind of ground, the most serious first; none for flat ground.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such kind.</exception>
    public static IReadOnlyList<TerrainCaution> For(TerrainKind terrain) => terrain switch
    {
        TerrainKind.Flat => [],
        TerrainKind.Hills => Hills,
        TerrainKind.Mountains => [.. Hills, .. Mountains],
        _ => throw new ArgumentOutOfRangeException(nameof(terrain), terrain, "No such kind of ground."),
    };
}

/// <summary>One caution.</summary>
/// <param name="Code">Its name in results.</param>
/// <param name="Text">Its words.</param>
public sealed record TerrainCaution(string Code, Words Text);
