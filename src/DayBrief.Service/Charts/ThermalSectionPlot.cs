namespace DayBrief.Service.Charts;

/// <summary>The sheet of one section through a thermal.</summary>
internal sealed class ThermalSectionPlot
{
    private const double LeftMargin = 50;
    private const double RightMargin = 6;
    private const double TopMargin = 20;
    private const double BottomMargin = 24;

    /// <summary>Room in the frame for the names at either side.</summary>
    private const double NameRoom = 92;

    private readonly double _middleM;

    public ThermalSectionPlot(ThermalSectionInput input)
    {
        Input = input;
        Slices = [.. input.Slices.OrderBy(slice => slice.HeightM)];
        Frame = new(LeftMargin, TopMargin, input.Width - RightMargin, input.Height - BottomMargin);
        TopM = 1.1 * Math.Max(Slices[^1].HeightM, Math.Max(input.CloudBaseM ?? 0, input.Usable?.TopM ?? 0));
        var (left, right) = (Slices.Min(slice => slice.AxisM - slice.RadiusM), Slices.Max(slice => slice.AxisM + slice.RadiusM));
        _middleM = (left + right) / 2;
        Exaggeration = Math.Min(4, (Frame.Width - (2 * NameRoom)) / (right - left) / (Frame.Height / TopM));
        Exaggeration = Exaggeration >= 1 ? Math.Floor(2 * Exaggeration) / 2 : Exaggeration;
        Drawing = new(input.Width, input.Height, input.In["The thermal from the side"], ThermalSectionWords.Describe(input, Slices));
        Labels = new(Drawing, Frame);
    }

    public ThermalSectionInput Input { get; }

    /// <summary>From the lowest up.</summary>
    public IReadOnlyList<ThermalSlice> Slices { get; }

    public Frame Frame { get; }

    public double TopM { get; }

    /// <summary>How many times wider than high a metre is drawn.</summary>
    public double Exaggeration { get; }

    public Drawing Drawing { get; }

    public LabelRoom Labels { get; }

    public double X(double metres) =>
        ((Frame.Left + Frame.Right) / 2) + ((metres - _middleM) * Exaggeration * Frame.Height / TopM);

    public double Y(double metres) => Frame.Bottom - (metres * Frame.Height / TopM);

    /// <summary>The thermal between two of its slices.</summary>
    public ThermalSlice At(double heightM)
    {
        if (heightM <= Slices[0].HeightM)
            return Slices[0];
        for (var i = 1; i < Slices.Count; i++)
        {
            if (heightM > Slices[i].HeightM)
                continue;
            var (a, b) = (Slices[i - 1], Slices[i]);
            var share = (heightM - a.HeightM) / (b.HeightM - a.HeightM);
            double Mix(double below, double above) => below + (share * (above - below));
            return new(
                heightM, Mix(a.RadiusM, b.RadiusM), Mix(a.AxisM, b.AxisM),
                Mix(a.UpdraftMs, b.UpdraftMs), Mix(a.OutwardMs, b.OutwardMs));
        }

        return Slices[^1];
    }

    /// <summary>A place on the edge: −1 upwind, 1 downwind, 0 on the axis.</summary>
    public Point Edge(ThermalSlice slice, int side) =>
        new(X(slice.AxisM + (side * slice.RadiusM)), Y(slice.HeightM));
}
