namespace DayBrief.Soundings;

/// <summary>Interpolation in a column whose values are linear in ln p between levels.</summary>
internal static class LogPressure
{
    /// <summary>Value at a pressure; outside the column the nearest layer is extended.</summary>
    public static double Interpolate(double[] hpa, double[] values, double at)
    {
        if (hpa.Length == 1)
            return values[0];
        var i = LayerByFalling(hpa, at);
        var share = Math.Log(hpa[i] / at) / Math.Log(hpa[i] / hpa[i + 1]);
        return values[i] + (share * (values[i + 1] - values[i]));
    }

    /// <summary>Index of the level below the layer that holds a value, for values that fall with the index.</summary>
    public static int LayerByFalling(double[] falling, double at)
    {
        var (low, high) = (0, falling.Length - 2);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (falling[middle + 1] > at)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }

    /// <summary>Index of the level below the layer that holds a value, for values that rise with the index.</summary>
    public static int LayerByRising(double[] rising, double at)
    {
        var (low, high) = (0, rising.Length - 2);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (rising[middle + 1] < at)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
