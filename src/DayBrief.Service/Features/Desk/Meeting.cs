using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Desk;

/// <summary>A field that two editors changed to different things.</summary>
internal sealed record Clash(string Field, string Theirs, string Mine);

/// <summary>Two editors of one draft: what the other has changed since this one looked, and both together.</summary>
/// <param name="Other">The version that the other has kept.</param>
/// <param name="Taken">Fields that only the other changed; they are in <see cref="Merged"/>.</param>
/// <param name="Clashes">Fields that both changed; while there are any, nothing is kept.</param>
/// <param name="Merged">The fields of both.</param>
internal sealed record Meeting(Draft Other, IReadOnlyList<string> Taken, IReadOnlyList<Clash> Clashes, DeskFields Merged)
{
    /// <summary>Merges field by field: a field that one editor left alone is the other's.</summary>
    /// <param name="seen">What this editor started from.</param>
    /// <param name="theirs">What the other has kept.</param>
    /// <param name="mine">What this editor wants to keep.</param>
    /// <param name="other">The other's draft.</param>
    /// <param name="over">This editor knows of the clashes and wants it so.</param>
    public static Meeting Of(DeskFields seen, DeskFields theirs, DeskFields mine, Draft other, bool over)
    {
        var merged = new DeskFields(mine.Values);
        var taken = new List<string>();
        var clashes = new List<Clash>();
        foreach (var field in seen.Values.Keys.Union(theirs.Values.Keys).Union(mine.Values.Keys).Order(StringComparer.Ordinal))
        {
            var (was, their, my) = (seen[field], theirs[field], mine[field]);
            if (their == my || their == was)
                continue;
            if (field is "given" or "refusedFiles")
            {
                merged[field] = string.Join('\n', theirs.Lines(field).Union(mine.Lines(field)));
                continue;
            }

            if (my == was)
            {
                merged[field] = their;
                taken.Add(field);
            }
            else if (!over)
            {
                clashes.Add(new(field, their, my));
            }
        }

        return new(other, taken, clashes, merged);
    }
}
