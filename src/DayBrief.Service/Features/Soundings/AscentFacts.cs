using System.Security.Cryptography;
using System.Text.Json;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Soundings;

/// <summary>By what people tell ascents apart.</summary>
/// <param name="Id">What it is kept under; nobody is shown it.</param>
/// <param name="Name">How its file was called.</param>
/// <param name="Source">Station, time, format: of several in one file the first that can be used.</param>
/// <param name="Levels">How many levels that one has.</param>
/// <param name="Several">The ascents of its file to choose from; one for most, and for the hours of one forecast.</param>
/// <param name="Fingerprint">The same for the same station, time and values, however they were written.</param>
internal sealed record AscentFacts(
    string Id, string? Name, SoundingSource Source, int Levels, IReadOnlyList<SoundingSource> Several, string Fingerprint)
{
    /// <exception cref="InvalidSoundingException">It cannot be used.</exception>
    public static AscentFacts Of(string id, ReadOnlyMemory<byte> content, string? name)
    {
        var contents = SoundingReader.Contents(content, name);
        var sounding = SoundingReader.Read(content, name);
        var isOne = contents.Count == 1 || contents[0].Format is "CSV" or "JSON";
        return new(id, name, sounding.Source, sounding.Levels.Length, isOne ? [sounding.Source] : contents, contents.Count == 1 ? Print(sounding) : id);
    }

    private static string Print(Sounding sounding) => Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(
        new
        {
            sounding.Source.Station,
            sounding.Source.ValidAt,
            sounding.Source.DayAndHour,
            Levels = sounding.Levels.Select(level => new
            {
                Hpa = Json.Rounded(level.Pressure.Hectopascals, 1),
                C = Json.Rounded(level.Temperature?.Celsius, 1),
                DewC = Json.Rounded(level.DewPoint?.Celsius, 1),
                From = Json.Rounded(level.Wind?.FromDegrees, 0),
                Kt = Json.Rounded(level.Wind?.Speed.Knots, 1),
            }),
        },
        Json.Line)));
}
