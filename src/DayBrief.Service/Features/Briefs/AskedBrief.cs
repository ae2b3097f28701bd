namespace DayBrief.Service.Features.Briefs;

/// <summary>The brief that a request for a page asks for, found once: what the page shows and what it is said to show cannot come from
/// before and after a signature.</summary>
internal static class AskedBrief
{
    /// <summary>Found at the first call for a request, and the same ever after.</summary>
    public static MadeBrief? Of(HttpContext context, Func<MadeBrief?> find)
    {
        if (!context.Items.TryGetValue(typeof(AskedBrief), out var known))
            context.Items[typeof(AskedBrief)] = known = find();
        return (MadeBrief?)known;
    }
}
