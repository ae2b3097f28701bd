using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Soundings;

/// <summary>Which ascent of an input a day uses.</summary>
internal static class AscentChoice
{
    /// <summary>The one chosen by its number, else the one nearest to six o'clock; where the input holds the hours of a forecast
    /// (a table or JSON with times), with the air aloft of about two in the afternoon.</summary>
    /// <exception cref="InvalidSoundingException">No usable ascent.</exception>
    /// <exception cref="InvalidInputException">There is no ascent of that number.</exception>
    public static Sounding For(ReadOnlyMemory<byte> content, string? name, int? index, Site site, DateOnly date)
    {
        if (index is { } chosen)
            return Numbered(content, name, chosen);
        var early = SoundingReader.Read(content, name, At(6));
        if (early.Source.Format is not ("CSV" or "JSON") || early.Source.ValidAt is not { } at)
            return early;
        var late = SoundingReader.Read(content, name, At(14));
        return late.Source.ValidAt - at is { } apart && apart > TimeSpan.FromHours(2) && apart < TimeSpan.FromHours(18)
            ? ForecastAloft.Compose(early, late)
            : early;

        DateTimeOffset At(int hour)
        {
            var local = date.ToDateTime(new TimeOnly(hour, 0));
            return new(local, site.TimeZone.GetUtcOffset(local));
        }
    }

    private static Sounding Numbered(ReadOnlyMemory<byte> content, string? name, int index)
    {
        var count = SoundingReader.Contents(content, name).Count;
        return index >= 0 && index < count
            ? SoundingReader.Read(content, name, index)
            : throw InvalidInputException.Field("ascentIndex", $"The input holds {count} ascents, numbered from 0; there is no {index}.");
    }
}
