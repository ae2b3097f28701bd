using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautious limits for a site that sets none of its own: beyond them a brief says "be down before it" and that the limit
/// is not set. Common practice, no source, but where one is named.</summary>
public static class UsualLimits
{
    /// <summary>Mean wind: 20 kt.</summary>
    public static readonly Speed Wind = Speed.FromKnots(20);

    /// <summary>Gusts, also across the runway: 25 kt.</summary>
    public static readonly Speed Gust = Speed.FromKnots(25);

    /// <summary>Mean wind across the runway: 15 kt.</summary>
    public static readonly Speed Crosswind = Speed.FromKnots(15);

    /// <summary>Visibility, m: 5 km, without which [SERA5005] lets nobody take off in a control zone under visual rules.</summary>
    public const double VisibilityM = 5000;

    /// <summary>Base of broken or overcast cloud, m: 450 m (1,500 ft), likewise [SERA5005].</summary>
    public const double CeilingM = 450;
}
