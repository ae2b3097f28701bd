namespace DayBrief.Service.Charts;

/// <summary>A text set in lines of a width, with a lead in bold on the first; its height is known before it is drawn.</summary>
internal sealed class SetText
{
    /// <summary>Where the baseline stands within a line, as a share of the size: accents reach to 0.95 of it, tails to −0.25.</summary>
    private const double Baseline = 0.95;

    private readonly (string Text, double Start)[] _lines;
    private readonly double _size;
    private readonly double _lead;
    private readonly string? _bold;
    private readonly bool _allBold;

    /// <param name="text">What it says.</param>
    /// <param name="width">Width of the lines.</param>
    /// <param name="size">Font size.</param>
    /// <param name="bold">Words before the text, in bold.</param>
    /// <param name="lead">Distance of the baselines, in sizes.</param>
    /// <param name="most">As many lines as there may be; a longer text ends in an ellipsis.</param>
    /// <param name="allBold">All of it is bold.</param>
    public SetText(string text, double width, double size, string? bold = null, double lead = 1.22, int most = int.MaxValue, bool allBold = false)
    {
        (_size, _lead, _bold, _allBold) = (size, lead, bold, allBold);
        var indent = bold is null ? 0 : Typeface.WidthOf(bold + " ", size, bold: true);
        var lines = Typeface.Flow(text, width, size, allBold, indent).ToArray();
        IsWhole = lines.Length <= most;
        _lines = IsWhole ? lines : [.. lines.Take(most - 1), Cut(lines[most - 1], width)];
    }

    /// <summary>Nothing was left off.</summary>
    public bool IsWhole { get; }

    public int Lines => _lines.Length;

    public double Height => _lines.Length * _size * _lead;

    /// <summary>Draws it from a top left corner down.</summary>
    public void Draw(Drawing drawing, double x, double top, Ink ink = Ink.Black)
    {
        var y = top + (Baseline * _size);
        if (_bold is not null)
            drawing.Text(x, y, _bold, new TextStyle(_size) { Bold = true, Ink = ink });
        foreach (var (text, start) in _lines)
        {
            if (text.Length > 0)
                drawing.Text(x + start, y, text, new TextStyle(_size) { Bold = _allBold, Ink = ink });
            y += _size * _lead;
        }
    }

    private (string Text, double Start) Cut((string Text, double Start) line, double width)
    {
        var words = line.Text.Split(' ').ToList();
        while (words.Count > 1 && line.Start + Typeface.WidthOf($"{string.Join(' ', words)} …", _size, _allBold) > width)
            words.RemoveAt(words.Count - 1);
        return ($"{string.Join(' ', words).TrimEnd(',', ';')} …", line.Start);
    }
}
