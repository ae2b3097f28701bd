using System.Globalization;
using System.Text;

namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>Writes iCalendar [RFC5545]: content lines of at most 75 octets, ended by CRLF, texts escaped, times in UTC.</summary>
internal sealed class CalendarText
{
    public const string MediaType = "text/calendar; charset=utf-8";

    private const int MostOctets = 75;

    private readonly StringBuilder _text = new();

    public byte[] Bytes() => Encoding.UTF8.GetBytes(_text.ToString());

    public CalendarText Line(string name, string value)
    {
        Fold($"{name}:{value}");
        return this;
    }

    public CalendarText Text(string name, string value) => Line(name, Escape(value));

    public CalendarText Time(string name, DateTimeOffset at) => Line(name, at.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture));

    /// <summary>3.3.11 TEXT; other control characters have no place in it.</summary>
    private static string Escape(string value)
    {
        var escaped = new StringBuilder(value.Length);
        foreach (var letter in value.ReplaceLineEndings("\n"))
        {
            if (letter == '\n')
                escaped.Append("\\n");
            else if (letter is '\\' or ';' or ',')
                escaped.Append('\\').Append(letter);
            else if (!char.IsControl(letter))
                escaped.Append(letter);
        }

        return escaped.ToString();
    }

    /// <summary>3.1: a longer line goes on in the next after a space; never within a character.</summary>
    private void Fold(string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                _text.Append("\r\n ");
                octets = 1;
            }

            _text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        _text.Append("\r\n");
    }
}
