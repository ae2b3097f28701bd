namespace DayBrief.Service.Charts;

/// <summary>How a line is drawn.</summary>
/// <param name="Ink">Tone.</param>
/// <param name="Width">Width in drawing units.</param>
/// <param name="Dash">Lengths of dash and gap in drawing units; null for a full line.</param>
internal sealed record Stroke(Ink Ink, double Width, (double On, double Off)? Dash = null)
{
    public static Stroke Main { get; } = new(Ink.Black, 1.6);

    public static Stroke Fine { get; } = new(Ink.Grey, 0.6);

    public static Stroke Grid { get; } = new(Ink.Faint, 0.4);

    public static Stroke Dashed { get; } = new(Ink.Black, 1, (4, 3));
}
