using System.Globalization;
using System.Runtime.CompilerServices;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>A sentence whose quantities are said in the reader's units when it is shown.</summary>
public sealed class Phrase
{
    private readonly FormattableString _text;

    private Phrase(FormattableString text) => _text = text;

    /// <summary>A sentence; heights, speeds and times in it stay quantities until it is said.</summary>
    public static Phrase Of(FormattableString text) => new(text);

    /// <summary>A sentence without quantities.</summary>
    public static Phrase Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(FormattableStringFactory.Create(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal)));
    }

    /// <summary>The sentence in English and a reader's units.</summary>
    public string In(SiteUnits units) => In(units, CultureInfo.InvariantCulture, text => text);

    /// <summary>The sentence in a reader's units and language.</summary>
    /// <param name="units">The reader's units.</param>
    /// <param name="figures">How the language writes figures.</param>
    /// <param name="translate">From an English format to the language's; the figures keep their numbers.</param>
    public string In(SiteUnits units, CultureInfo figures, Func<string, string> translate)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(translate);
        return string.Format(new Format(units, figures, translate), translate(_text.Format), _text.GetArguments());
    }

    /// <summary>The sentence in metric units.</summary>
    public override string ToString() => In(SiteUnits.Metric);

    /// <summary>Heights to 10 ft or m, from 1,000 ft on to 100 ft; wind in whole kt or m/s; climbs (format "climb") to a tenth.</summary>
    private sealed class Format(SiteUnits units, CultureInfo figures, Func<string, string> translate) : IFormatProvider, ICustomFormatter
    {
        private bool IsMetric => units == SiteUnits.Metric;

        public object? GetFormat(Type? formatType) =>
            formatType == typeof(ICustomFormatter) ? this : figures.GetFormat(formatType);

        string ICustomFormatter.Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
        {
            Height height => Length(height),
            Speed speed => Said(speed, format),
            PerHeight rate => Said(rate),
            Phrase part => part.In(units, figures, translate),
            IFormattable number => number.ToString(format, figures),
            _ => arg?.ToString() ?? "",
        };

        private string Length(Height height)
        {
            var value = IsMetric ? height.Metres : height.Feet;
            var step = !IsMetric && Math.Abs(value) >= 1000 ? 100 : 10;
            return $"{(Math.Round(value / step) * step).ToString("#,0", figures)} {(IsMetric ? "m" : "ft")}";
        }

        private string Said(PerHeight rate)
        {
            // A change per kilometre is a change of 0.3048 of it per 1,000 ft.
            var value = rate.PerKilometre * (IsMetric ? 1 : 0.3048) * (rate.OfSpeed && !IsMetric ? Speed.FromMetresPerSecond(1).Knots : 1);
            return string.Format(figures, PerThousand(rate.OfSpeed), value);
        }

        private string PerThousand(bool ofSpeed) => (ofSpeed, IsMetric) switch
        {
            (true, true) => translate("{0:0.0} m/s per 1,000 m"),
            (true, false) => translate("{0:0.0} kt per 1,000 ft"),
            (false, true) => translate("{0:0.0} °C per 1,000 m"),
            (false, false) => translate("{0:0.0} °C per 1,000 ft"),
        };

        private string Said(Speed speed, string? format)
        {
            var value = IsMetric ? speed.MetresPerSecond : speed.Knots;
            return $"{value.ToString(format == "climb" ? "0.0" : "0", figures)} {(IsMetric ? "m/s" : "kt")}";
        }
    }
}

/// <summary>How much something changes with height, to be said per 1,000 m or per 1,000 ft.</summary>
/// <param name="PerKilometre">Change in kelvins or m/s per kilometre.</param>
/// <param name="OfSpeed">It is a speed, else a temperature.</param>
internal readonly record struct PerHeight(double PerKilometre, bool OfSpeed);
