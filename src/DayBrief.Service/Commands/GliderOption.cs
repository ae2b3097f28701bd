using System.CommandLine;
using DayBrief.Flight.Gliders;

namespace DayBrief.Service.Commands;

/// <summary>A class of glider by its name; another name is a usage error.</summary>
internal sealed class GliderOption : Option<string>
{
    public GliderOption(string description)
        : base("--glider")
    {
        (Description, HelpName) = (description, "CLASS");
        this.AcceptOnlyFromAmong([.. Enum.GetValues<GliderClass>().Select(GenericGlider.NameOf)]);
    }

    /// <summary>The class that was given, or the option's default.</summary>
    public GliderClass Of(ParseResult parsed) => GenericGlider.Named(parsed.GetRequiredValue(this))!.Value;
}
