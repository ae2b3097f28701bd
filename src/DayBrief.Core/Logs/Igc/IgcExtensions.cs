namespace DayBrief.Logs.Igc;

/// <summary>What an I record says stands behind the heights of each B record. It gives columns, never a scale.</summary>
/// <remarks>[FAIIGC] appendix A. Used are further places of the minutes (LAD, LOD), whose meaning needs no scale, and the sensors
/// of noise and motor (ENL, MOP), read as a share of what their digits can hold.</remarks>
internal sealed class IgcExtensions
{
    private readonly Dictionary<string, (int From, int To)> _columns = [];

    /// <summary>Reads <c>INN</c> and then NN times start, end, three letters; what cannot be so is left out.</summary>
    /// <returns>Whether all of it could be read.</returns>
    public bool Read(ReadOnlySpan<byte> line)
    {
        _columns.Clear();
        if (IgcLine.Digits(line, 2, 3) is not { } count)
            return false;
        for (var i = 0; i < count; i++)
        {
            var at = 4 + (7 * i);
            if (at + 6 > line.Length || IgcLine.Digits(line, at, at + 1) is not { } from || IgcLine.Digits(line, at + 2, at + 3) is not { } to || from < 36 || to < from || to - from > 8)
                return false;
            _columns[System.Text.Encoding.Latin1.GetString(line.Slice(at + 3, 3))] = (from, to);
        }

        return true;
    }

    /// <summary>Minutes that further places add, such as 0.00045 for "45" after three places.</summary>
    public double FurtherMinutes(ReadOnlySpan<byte> line, string code) =>
        _columns.TryGetValue(code, out var at) && IgcLine.Digits(line, at.From, at.To) is { } places
            ? places * Math.Pow(10, -3 - (at.To - at.From + 1))
            : 0;

    /// <summary>Whether a sensor stands at or above half of what its digits hold.</summary>
    public bool IsHigh(ReadOnlySpan<byte> line, string code) =>
        _columns.TryGetValue(code, out var at) && IgcLine.Digits(line, at.From, at.To) is { } value
        && value >= 0.5 * (Math.Pow(10, at.To - at.From + 1) - 1);
}
