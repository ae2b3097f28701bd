namespace DayBrief.Service.Charts;

/// <summary>Which part of a text stands at its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>How a text is set.</summary>
/// <param name="Size">Font size in drawing units.</param>
internal sealed record TextStyle(double Size)
{
    /// <summary>The least size of a drawing's labels: on the narrowest phone, whose width a drawing fills, a label is still 12 px
    /// high.</summary>
    public const double Least = 12.1;

    /// <summary>Width of a drawing for a page: that of the narrowest phone, in px.</summary>
    public const double PhoneWidth = 320;

    public bool Bold { get; init; }

    public Ink Ink { get; init; } = Ink.Black;

    public Anchor Anchor { get; init; } = Anchor.Start;

    /// <summary>Degrees clockwise about the text's point.</summary>
    public double Rotation { get; init; }

    /// <summary>Clears the paper around the letters, for labels that lie on lines.</summary>
    public bool Halo { get; init; }
}
