using DayBrief.Logs;
using DayBrief.Logs.Igc;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Flights;

/// <summary>From the bytes of a recorder's file to its figures, or one clear reason why not.</summary>
internal static class FlightReading
{
    /// <summary>The flight of a file; <paramref name="field"/> is how whoever asks calls the input.</summary>
    /// <exception cref="InvalidInputException">No flight can be read.</exception>
    public static FlightJson Of(ReadOnlyMemory<byte> content, string? name, string field)
    {
        try
        {
            return FlightJson.Of(IgcReader.Read(content.Span), name);
        }
        catch (InvalidLogException refused)
        {
            throw new InvalidInputException(new ProblemError(refused.Words, "flight-log", refused.Line, Field: field));
        }
    }
}
