using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace DayBrief.Texts;

/// <summary>A message whose text and figures stay apart, so that it can be said in another language; English by itself.</summary>
[InterpolatedStringHandler]
public sealed class Words : IEquatable<Words>
{
    private readonly StringBuilder _format;
    private readonly List<object?> _figures;

    /// <summary>Called by the compiler for $"…".</summary>
    public Words(int literalLength, int formattedCount)
    {
        _format = new(literalLength + (8 * formattedCount));
        _figures = new(formattedCount);
    }

    /// <summary>The text with {0}, {1:0.0} … for its figures.</summary>
    public string Format => _format.ToString();

    /// <summary>What stands for {0}, {1} …</summary>
    public IReadOnlyList<object?> Figures => _figures;

    /// <summary>A part of a message, to be put into another.</summary>
    public static Words Of(Words words) => words;

    /// <summary>A message without figures.</summary>
    public static implicit operator Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = new Words(text.Length, 0);
        words.AppendLiteral(text);
        return words;
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        _format.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value, string? format = null)
    {
        _format.Append('{').Append(_figures.Count.ToString(CultureInfo.InvariantCulture));
        if (format is not null)
            _format.Append(':').Append(format);
        _format.Append('}');
        _figures.Add(value);
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted(ReadOnlySpan<char> value) => AppendFormatted(value.ToString());

    /// <summary>Said in a language.</summary>
    /// <param name="figures">How the language writes figures.</param>
    /// <param name="translate">From an English format to the language's.</param>
    public string In(CultureInfo figures, Func<string, string> translate)
    {
        ArgumentNullException.ThrowIfNull(translate);
        return string.Format(figures, translate(Format), [.. _figures.Select(figure => figure is Words part ? part.In(figures, translate) : figure)]);
    }

    /// <summary>In English.</summary>
    public override string ToString() => In(CultureInfo.InvariantCulture, text => text);

    /// <inheritdoc/>
    public bool Equals(Words? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Words);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);
}
