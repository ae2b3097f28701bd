namespace DayBrief.Service.Charts;

/// <summary>A text in which bold and plain words follow each other, set in lines of a width; its height is known before it is drawn.</summary>
internal sealed class MixedText
{
    /// <summary>As in <see cref="SetText"/>.</summary>
    private const double Baseline = 0.95;

    private readonly List<List<(string Words, bool Bold)>> _lines = [[]];
    private readonly double _size;
    private readonly double _lead;

    /// <param name="parts">What it says, and what of it is bold.</param>
    /// <param name="width">Width of the lines.</param>
    /// <param name="size">Font size.</param>
    /// <param name="lead">Distance of the baselines, in sizes.</param>
    public MixedText(IEnumerable<(string Text, bool Bold)> parts, double width, double size, double lead)
    {
        (_size, _lead) = (size, lead);
        foreach (var (word, bold) in parts.SelectMany(part => part.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(word => (word, part.Bold))))
        {
            if (_lines[^1].Count > 0 && WidthOf(_lines[^1]) + Typeface.WidthOf($" {word}", size, bold) > width)
                _lines.Add([]);
            var line = _lines[^1];
            if (line.Count > 0 && line[^1].Bold == bold)
                line[^1] = ($"{line[^1].Words} {word}", bold);
            else
                line.Add((word, bold));
        }
    }

    public double Height => _lines.Count * _size * _lead;

    /// <summary>Draws it from a top left corner down.</summary>
    public void Draw(Drawing drawing, double x, double top)
    {
        var y = top + (Baseline * _size);
        foreach (var line in _lines)
        {
            var start = x;
            foreach (var (words, bold) in line)
            {
                drawing.Text(start, y, words, new TextStyle(_size) { Bold = bold });
                start += Typeface.WidthOf(words + " ", _size, bold);
            }

            y += _size * _lead;
        }
    }

    private double WidthOf(List<(string Words, bool Bold)> line) => line.Sum(run => Typeface.WidthOf(run.Words + " ", _size, run.Bold));
}
