namespace DayBrief.Service.Charts;

/// <summary>The sheet of one picture of the day: local time across, height above the field up.</summary>
internal sealed class DayPicturePlot
{
    private const double LeftMargin = 44;
    private const double RightMargin = 12;
    private const double TopMargin = 20;
    private const double BottomMargin = 52;

    // On a wide sheet the times to mark stand beside each other.
    private const double WideBottomMargin = 38;
    private const double Wide = 450;

    private readonly double _from;
    private readonly double _to;

    public DayPicturePlot(DayPictureInput input)
    {
        var first = input.Moments.Count > 0 ? input.Moments[0].Time : new TimeOnly(6, 0);
        var last = input.Moments.Count > 0 ? input.Moments[^1].Time : new TimeOnly(20, 0);
        From = input.Sunrise ?? first;
        To = (input.Sunset ?? last) is var end && end > From ? end : new TimeOnly(23, 59);  // a sun that sets after midnight
        input = input with { Moments = [.. input.Moments.Where(m => m.Time >= From && m.Time <= To)] };
        Input = input;
        (_from, _to) = (From.ToTimeSpan().TotalHours, To.ToTimeSpan().TotalHours);
        TopM = TopOf(input);
        Frame = new(LeftMargin, TopMargin, input.Width - RightMargin, input.Height - (input.Width < Wide ? BottomMargin : WideBottomMargin));
        Drawing = new(input.Width, input.Height, input.In["The day: how high and when"], DayPictureWords.Describe(input));
        Labels = new(Drawing, Frame);
        Outside = new(Drawing, new(0, 0, input.Width, input.Height));
    }

    public DayPictureInput Input { get; }

    public TimeOnly From { get; }

    public TimeOnly To { get; }

    /// <summary>Height of the upper edge.</summary>
    public double TopM { get; }

    public Frame Frame { get; }

    public Drawing Drawing { get; }

    /// <summary>Labels among the curves.</summary>
    public LabelRoom Labels { get; }

    /// <summary>Labels around the frame.</summary>
    public LabelRoom Outside { get; }

    public double X(TimeOnly time) =>
        Frame.Left + (Frame.Width * (time.ToTimeSpan().TotalHours - _from) / Math.Max(_to - _from, 0.1));

    public double Y(double metres) => Frame.Bottom - (Frame.Height * metres / TopM);

    public Point At(TimeOnly time, double metres) => new(X(time), Y(metres));

    /// <summary>Stretches of the day in which a value is known.</summary>
    public IEnumerable<IReadOnlyList<DayMoment>> Stretches(Func<DayMoment, bool> known)
    {
        var stretch = new List<DayMoment>();
        foreach (var moment in Input.Moments)
        {
            if (known(moment))
            {
                stretch.Add(moment);
                continue;
            }

            if (stretch.Count > 0)
                yield return stretch;
            stretch = [];
        }

        if (stretch.Count > 0)
            yield return stretch;
    }

    /// <summary>Room for the tops and a little more; a line or a cloud far above does not flatten the day.</summary>
    private static double TopOf(DayPictureInput input)
    {
        var tops = input.Moments.SelectMany(m => new[] { m.UsableTopM, m.P90M, m.CloudBaseM }).Append(input.JudgedTopM).Max() ?? 1000;
        double?[] others = [input.FreezingLevelM, input.CeilingM, input.Moments.Max(m => m.CloudTopM)];
        var highest = others.Where(other => other <= 1.5 * tops).Append(tops).Max()!.Value;
        return Math.Max(1.12 * highest, 300);
    }
}
