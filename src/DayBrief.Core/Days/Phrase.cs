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

    /// <summary>Quantities rounded as <see cref="Rounding"/> says. Heights may be said as "length" or "distance", speeds as "climb";
    /// a change of height less than a step is said to be less than it ("change").</summary>
    private sealed class Format(SiteUnits units, CultureInfo figures, Func<string, string> translate) : IFormatProvider, ICustomFormatter
    {
        private readonly Rounding _rounding = new(units == SiteUnits.Metric);

        public object? GetFormat(Type? formatType) =>
            formatType == typeof(ICustomFormatter) ? this : figures.GetFormat(formatType);

        string ICustomFormatter.Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
        {
            Height height => Said(height, format),
            Speed speed => format == "climb"
                ? $"{_rounding.Vertical(speed.MetresPerSecond).ToString("0.0", figures)} {_rounding.VerticalUnit}"
                : $"{Whole(_rounding.Speed(speed.MetresPerSecond))} {_rounding.SpeedUnit}",
            PerHeight rate => Said(rate),
            Phrase part => part.In(units, figures, translate),
            IFormattable number => number.ToString(format, figures),
            _ => arg?.ToString() ?? "",
        };

        private string Said(Height height, string? format) => format switch
        {
            "distance" => $"{_rounding.Distance(height.Metres).ToString("0.0", figures)} {_rounding.DistanceUnit}",
            "length" => $"{Whole(_rounding.Length(height.Metres))} {_rounding.HeightUnit}",
            "change" when _rounding.Height(height.Metres) == 0 =>
                string.Format(figures, translate("less than {0}"), $"{Whole(_rounding.HeightStep)} {_rounding.HeightUnit}"),
            _ => $"{Whole(_rounding.Height(height.Metres))} {_rounding.HeightUnit}",
        };

        private string Said(PerHeight rate)
        {
            // A change per kilometre is a change of 0.3048 of it per 1,000 ft.
            var value = rate.PerKilometre * (_rounding.Metric ? 1 : 0.3048) * (rate.OfSpeed ? SpeedUnits : 1);
            return string.Format(figures, PerThousand(rate.OfSpeed), Rounding.To(value, 0.1));
        }

        private double SpeedUnits => _rounding.Metric ? Speed.FromMetresPerSecond(1).KilometresPerHour : Speed.FromMetresPerSecond(1).Knots;

        private string PerThousand(bool ofSpeed) => (ofSpeed, _rounding.Metric) switch
        {
            (true, true) => translate("{0:0.0} km/h per 1,000 m"),
            (true, false) => translate("{0:0.0} kt per 1,000 ft"),
            (false, true) => translate("{0:0.0} °C per 1,000 m"),
            (false, false) => translate("{0:0.0} °C per 1,000 ft"),
        };

        private string Whole(double figure) => figure.ToString("#,0", figures);
    }
}

/// <summary>How much something changes with height, to be said per 1,000 m or per 1,000 ft.</summary>
/// <param name="PerKilometre">Change in kelvins or m/s per kilometre.</param>
/// <param name="OfSpeed">It is a speed, else a temperature.</param>
internal readonly record struct PerHeight(double PerKilometre, bool OfSpeed);
