using System.CommandLine;

namespace DayBrief.Service.Commands;

/// <summary>Limits of numbers on the command line; outside them it is a usage error.</summary>
internal static class CommandNumber
{
    public static void InRange(Option<double?> option, double min, double max) =>
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double?>() is { } value && !(value >= min && value <= max))
                result.AddError($"{option.Name} must be from {min} to {max}.");
        });

    public static void InRange(Option<double[]> option, double min, double max) =>
        option.Validators.Add(result =>
        {
            if ((result.GetValueOrDefault<double[]>() ?? []).Any(value => !(value >= min && value <= max)))
                result.AddError($"{option.Name} must be from {min} to {max}.");
        });
}
