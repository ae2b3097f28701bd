using System.Text;

namespace DayBrief.Logs.Igc;

/// <summary>What is known of a file while its lines go by.</summary>
internal sealed class IgcReading
{
    private readonly IgcExtensions _extensions = new();
    private readonly IgcClock _clock = new();
    private readonly List<Fix> _fixes = [];
    private readonly SortedDictionary<string, int> _counts = new(StringComparer.Ordinal);
    private string? _recorder;
    private int _records;

    public void Take(ReadOnlySpan<byte> line, int number)
    {
        if (line.IsEmpty)
            return;
        if (number == 1 && line[0] != 'A')
            Count("first-line");
        switch ((char)line[0])
        {
            case 'A' when _recorder is null && line.Length >= 4 && IsMaker(line[1..4]):
                _recorder = Encoding.ASCII.GetString(line[1..4]);
                break;
            case 'H':
                if (IgcDate.Read(line) is { } date)
                    Dated(date);
                break;
            case 'I':
                if (!_extensions.Read(line))
                    Count("extensions");
                break;
            case 'B':
                Add(line);
                break;
            case 'G':
                _counts["signed"] = 1;
                break;
        }
    }

    public FlightLog Close()
    {
        if (_records == 0)
            throw new InvalidLogException("the file holds no position (no B record that can be read). A flight recorder's file of the FAI/IGC standard is needed.");
        return new FlightLog
        {
            Recorder = _recorder,
            Date = _clock.First,
            Fixes = [.. _fixes],
            Records = _records,
            Remarks = [.. Remarks()],
        };
    }

    private void Dated(DateOnly date)
    {
        if (_clock.Dated(date))
            Count("dates");
    }

    private void Add(ReadOnlySpan<byte> line)
    {
        if (IgcFix.Read(line, _extensions) is not { } fix)
        {
            Count("malformed");
            return;
        }

        _records++;
        if (!fix.Is3D)
            Count("no-3d");
        if (_clock.Seconds(fix.Seconds) is not { } seconds)
            Count("time-back");
        else if (_fixes.Count > 0 && seconds == _fixes[^1].Seconds)
            Count("time-again");
        else
            _fixes.Add(fix with { Seconds = seconds });
    }

    private IEnumerable<LogRemark> Remarks()
    {
        if (_clock.First is null)
            yield return new("no-date", "The file states no date: the times of day are known, the day is not.");
        if (!_counts.ContainsKey("signed"))
            yield return new("no-signature", "The file carries no signature of the recorder (no G record).");
        if (_fixes.TrueForAll(fix => fix.PressureHeightM == 0))
            yield return new("no-pressure-height", "No pressure height is recorded: heights are those of the satellite fixes.");
        foreach (var (code, count) in _counts)
        {
            if (IgcRemarks.Of(code, count) is { } message)
                yield return new(code, message, count);
        }
    }

    private void Count(string code) => _counts[code] = _counts.GetValueOrDefault(code) + 1;

    private static bool IsMaker(ReadOnlySpan<byte> letters) =>
        char.IsAsciiLetterOrDigit((char)letters[0]) && char.IsAsciiLetterOrDigit((char)letters[1]) && char.IsAsciiLetterOrDigit((char)letters[2]);
}
