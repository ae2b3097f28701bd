using System.Collections.Concurrent;

namespace DayBrief.Service.Infrastructure;

/// <summary>What follows from its key alone and was found lately; all is forgotten when it becomes too much.</summary>
/// <param name="most">How many values are remembered.</param>
internal sealed class Remembered<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, TValue> _known = new();

    public TValue Of(TKey key, Func<TValue> find)
    {
        if (_known.TryGetValue(key, out var known))
            return known;
        if (_known.Count >= most)
            Forget();
        return _known[key] = find();
    }

    public void Forget() => _known.Clear();
}
