using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Limits of numbers on the command line; outside them it is a usage error.</summary>
internal static class CommandNumber
{
    /// <summary>As the table of ranges has it.</summary>
    public static void InRange(Option<double?> option, string field) => InRange(option, InputRange.Of(field).Least, InputRange.Of(field).Most);

    /// <summary>As the table of ranges has it.</summary>
    public static void InRange(Option<double[]> option, string field) => InRange(option, InputRange.Of(field).Least, InputRange.Of(field).Most);

    public static void InRange(Option<double?> option, double min, double max) =>
        option.Validators.Add(result => Check(result, option.Name, min, max));

    public static void InRange(Option<double[]> option, double min, double max) =>
        option.Validators.Add(result => Check(result, option.Name, min, max));

    /// <summary>Looks at the words themselves: a word that is no number is reported by the parser.</summary>
    private static void Check(OptionResult result, string name, double min, double max)
    {
        foreach (var token in result.Tokens)
        {
            if (double.TryParse(token.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && !(value >= min && value <= max))
                result.AddError($"{name} must be from {min} to {max}.");
        }
    }
}
