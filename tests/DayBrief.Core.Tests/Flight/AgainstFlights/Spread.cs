namespace DayBrief.Flight.AgainstFlights;

/// <summary>Median and quartiles of some values, between the values on straight lines.</summary>
internal readonly record struct Spread(double Lower, double Median, double Upper)
{
    public static Spread Of(IEnumerable<double> values)
    {
        var ordered = values.Order().ToArray();
        double At(double share)
        {
            var place = share * (ordered.Length - 1);
            var below = (int)place;
            return ordered[below] + ((place - below) * (ordered[Math.Min(ordered.Length - 1, below + 1)] - ordered[below]));
        }

        return new(At(0.25), At(0.5), At(0.75));
    }

    /// <summary>The "met": the simulated median within the flown quartiles.</summary>
    public bool Holds(Spread simulated) => simulated.Median >= Lower && simulated.Median <= Upper;

    public override string ToString() => FormattableString.Invariant($"{Median:0.00} [{Lower:0.00}, {Upper:0.00}]");
}
