namespace DayBrief.Soundings.Formats.Temp;

/// <summary>One group of a message and the line it stands in.</summary>
internal readonly record struct TempGroup(string Text, int Line)
{
    public Origin Origin => new(Line, Text);

    /// <summary>Five figures or solidi, as every group of levels is.</summary>
    public bool IsWhole => Text.Length == 5 && Text.All(c => c is '/' or (>= '0' and <= '9'));

    /// <summary>Opens section 31313 (sounding system), 41414 (clouds), 51515–59595 (regional) or 61616–69696 (national).</summary>
    public bool OpensSection =>
        IsWhole && Text[0] is >= '3' and <= '6' && Text[1] is >= '1' and <= '9' && Text[2] == Text[0] && Text[3] == Text[1] && Text[4] == Text[0]
        && (Text is "31313" or "41414" || Text[0] is '5' or '6');

    /// <summary>A number from some of its figures; null where one is a solidus or the group is damaged.</summary>
    public int? Number(int start, int length)
    {
        if (!IsWhole)
        {
            return null;
        }

        var value = 0;
        foreach (var c in Text.AsSpan(start, length))
        {
            if (c is < '0' or > '9')
            {
                return null;
            }

            value = (10 * value) + (c - '0');
        }

        return value;
    }
}
