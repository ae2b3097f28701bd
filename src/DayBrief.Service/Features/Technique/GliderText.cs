using DayBrief.Flight.Gliders;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Technique;

/// <summary>What the classes of gliders are called.</summary>
internal static class GliderText
{
    public static string Name(GliderClass glider, Language language) => glider switch
    {
        GliderClass.EarlyTrainer => language["early training two-seater"],
        GliderClass.Trainer => language["training two-seater"],
        GliderClass.Club => language["club single-seater"],
        GliderClass.Standard => language["15 m single-seater"],
        _ => language["18 m and larger"],
    };
}
