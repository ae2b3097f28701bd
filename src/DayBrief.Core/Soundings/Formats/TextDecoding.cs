using System.Text;

namespace DayBrief.Soundings.Formats;

/// <summary>Text from bytes whose encoding nobody states: byte order mark, UTF-16 by its zero bytes, UTF-8 where valid,
/// Windows-1252 otherwise.</summary>
internal static class TextDecoding
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Null if the bytes are not text.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes)
    {
        var text = bytes switch
        {
            [0xEF, 0xBB, 0xBF, .. var rest] => Utf8OrWindows(rest),
            [0xFF, 0xFE, .. var rest] => Encoding.Unicode.GetString(rest),
            [0xFE, 0xFF, .. var rest] => Encoding.BigEndianUnicode.GetString(rest),
            [not 0, 0, not 0, 0, ..] => Encoding.Unicode.GetString(bytes),
            [0, not 0, 0, not 0, ..] => Encoding.BigEndianUnicode.GetString(bytes),
            _ => Utf8OrWindows(bytes),
        };
        return LooksLikeText(text) ? text : null;
    }

    private static string Utf8OrWindows(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return StrictUtf8.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
        }
    }

    // Telegrams carry a few control characters (SOH, ETX, bells of teleprinters); binary data carries many, or zeros.
    private static bool LooksLikeText(string text)
    {
        var controls = 0;
        foreach (var c in text)
        {
            if (c is '\0' or '\uFFFD')
            {
                return false;
            }

            if (char.IsControl(c) && c is not ('\t' or '\n' or '\r' or '\f' or '\v'))
            {
                controls++;
            }
        }

        return controls * 50 <= text.Length + 400;
    }
}
