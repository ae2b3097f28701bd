using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats;

/// <summary>Remarks while an ascent is read; of each kind the first few, then how many more there were.</summary>
internal sealed class RemarkList
{
    private const int KeptOfEachKind = 6;

    private readonly List<Remark> _kept = [];
    private readonly OrderedDictionary<string, (Severity Severity, int Count)> _counts = [];

    /// <summary>A value that hardly occurs: it is used as it stands, and whoever gave it is asked.</summary>
    public void Ask(string code, Words message, double? levelHpa) => Add(Severity.Warning, code, message, levelHpa, asks: true);

    public void Add(Severity severity, string code, Words message, double? levelHpa = null) => Add(severity, code, message, levelHpa, asks: false);

    private void Add(Severity severity, string code, Words message, double? levelHpa, bool asks)
    {
        var count = _counts.TryGetValue(code, out var known) ? known.Count + 1 : 1;
        _counts[code] = (severity, count);
        if (count <= KeptOfEachKind)
        {
            _kept.Add(new(severity, code, message, levelHpa is { } hpa ? Pressure.FromHectopascals(hpa) : null) { Asks = asks });
        }
    }

    public IEnumerable<Remark> All() =>
    [
        .. _kept,
        .. from entry in _counts
           where entry.Value.Count > KeptOfEachKind
           select new Remark(entry.Value.Severity, entry.Key, $"… and {entry.Value.Count - KeptOfEachKind} more of the kind \"{entry.Key}\"."),
    ];
}
