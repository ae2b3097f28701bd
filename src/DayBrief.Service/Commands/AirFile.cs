using System.Collections.Immutable;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Soundings.Formats.Hourly;

namespace DayBrief.Service.Commands;

/// <summary>Profiles of later hours: arrays by variable and level with an array of hours, or ascents of any supported format.</summary>
internal static class AirFile
{
    public static ImmutableArray<Sounding> Read(string path, Site site)
    {
        if (!File.Exists(path))
            throw InvalidInputException.Field("--air", $"There is no file {path}.");
        var content = File.ReadAllBytes(path);
        return [.. HourlyProfiles.Read(content, Path.GetFileName(path), site.Elevation) ?? SoundingReader.ReadAll(content, Path.GetFileName(path))];
    }
}
