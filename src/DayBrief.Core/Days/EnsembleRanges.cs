namespace DayBrief.Days;

/// <summary>Reads the ranges off an ensemble.</summary>
internal static class EnsembleRanges
{
    public static DayRanges Of(Ensemble ensemble, DayFrame frame)
    {
        DayRange<DateTimeOffset> Times(Func<Headline, int> step) =>
            Read(ensemble.Sorted(headline => step(headline) is >= 0 and var at ? at : double.NaN, double.PositiveInfinity), at => frame.Times[(int)at]);
        DayRange<double> Values(Func<Headline, double> figure) =>
            Read(ensemble.Sorted(figure, double.NegativeInfinity), value => value);
        return new()
        {
            TriggerTime = Times(headline => headline.Trigger),
            TriggerTemperatureC = Values(headline => headline.TriggerKelvins - Units.Temperature.ZeroCelsius),
            FirstUsable = Times(headline => headline.FirstUsable),
            BestFrom = Times(headline => headline.BestFrom),
            BestTo = Times(headline => headline.BestTo),
            Last = Times(headline => headline.Last),
            MaxDepthM = Values(headline => headline.MaxDepthM),
            MaxUsableTopM = Values(headline => headline.MaxUsableTopM),
            MaxClimbMs = Values(headline => headline.MaxClimbMs),
            FirstCloud = Times(headline => headline.FirstCloud),
            FirstCloudBaseM = Values(headline => headline.FirstCloudBaseM),
        };
    }

    private static DayRange<T> Read<T>(double[] sorted, Func<double, T> convert)
        where T : struct
    {
        T? At(double share) =>
            sorted[(int)Math.Round(share * (sorted.Length - 1))] is var value && double.IsFinite(value) ? convert(value) : null;
        return new(At(0.1), At(0.5), At(0.9));
    }
}
