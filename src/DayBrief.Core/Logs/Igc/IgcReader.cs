
namespace DayBrief.Logs.Igc;

/// <summary>Reads a flight recorder file of the FAI/IGC standard.</summary>
/// <remarks>[FAIIGC] appendix A. Read are the maker's three letters, the date, the columns of the extensions, and the fixes; names,
/// registrations, serial numbers, tasks and comments are passed over unread. Linear in the length of the file.</remarks>
public static class IgcReader
{
    /// <summary>Largest file that is read: 10 MB.</summary>
    public const int MostBytes = 10_000_000;

    /// <summary>A flight from the bytes of a file: any line ends, text in any encoding.</summary>
    /// <exception cref="InvalidLogException">Too large, or without a single fix.</exception>
    public static FlightLog Read(ReadOnlySpan<byte> file)
    {
        if (file.Length > MostBytes)
            throw new InvalidLogException($"the file is larger than {MostBytes / 1_000_000} MB; a flight of a day is not.");
        var reading = new IgcReading();
        var number = 0;
        while (!file.IsEmpty)
        {
            var end = file.IndexOfAny((byte)'\n', (byte)'\r');
            reading.Take(TrimEnd(end < 0 ? file : file[..end]), ++number);
            file = end < 0 ? default : file[(end + (end + 1 < file.Length && file[end] == '\r' && file[end + 1] == '\n' ? 2 : 1))..];
        }

        return reading.Close();
    }

    /// <summary>Whether a file looks like a flight recorder's: a line that begins with B and holds a position is among the first.</summary>
    public static bool Recognises(ReadOnlySpan<byte> file)
    {
        var start = file[..Math.Min(file.Length, 20_000)];
        var extensions = new IgcExtensions();
        foreach (var range in start.Split((byte)'\n'))
        {
            if (start[range] is [(byte)'B', ..] line && IgcFix.Read(line, extensions) is not null)
                return true;
        }

        return false;
    }

    private static ReadOnlySpan<byte> TrimEnd(ReadOnlySpan<byte> line) => line.TrimEnd(" \t\u001a"u8);
}
