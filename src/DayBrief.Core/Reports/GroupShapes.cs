using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>What the groups of aerodrome reports look like.</summary>
/// <remarks>[WMO306] volume I.1, FM 15, FM 16 and FM 51; [FAA28] chapters 24 and 27 for the United States' forms.</remarks>
internal static partial class GroupShapes
{
    [GeneratedRegex(@"^[A-Z][A-Z0-9]{3}$")]
    public static partial Regex Station();

    [GeneratedRegex(@"^([0-9]{2})([0-9]{2})([0-9]{2})Z$")]
    public static partial Regex Time();

    [GeneratedRegex(@"^([0-9]{2})([0-9]{2})/([0-9]{2})([0-9]{2})$")]
    public static partial Regex Period();

    [GeneratedRegex(@"^([0-9]{3}|VRB|///)P?([0-9]{2,3}|//)(?:GP?([0-9]{2,3}|//))?(KT|MPS|KMH)$")]
    public static partial Regex Wind();

    [GeneratedRegex(@"^([0-9]{3})V([0-9]{3})$")]
    public static partial Regex Varying();

    [GeneratedRegex(@"^([0-9]{4})(?:NDV|N|NE|E|SE|S|SW|W|NW)?$")]
    public static partial Regex Metres();

    [GeneratedRegex(@"^([PM])?([0-9]{1,2})(?:/([0-9]{1,2}))?SM$")]
    public static partial Regex Miles();

    [GeneratedRegex(@"^(\+|-|VC)?(MI|BC|PR|DR|BL|SH|TS|FZ)?((?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PO|SQ|FC|SS|DS){0,3})$")]
    public static partial Regex Weather();

    [GeneratedRegex(@"^RE(?:(?:MI|BC|PR|DR|BL|SH|TS|FZ)?(?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|FG|VA|DU|SA|SQ|FC|SS|DS){0,3}|//)$")]
    public static partial Regex Recent();

    [GeneratedRegex(@"^(FEW|SCT|BKN|OVC|///)([0-9]{3}|///)?(CB|TCU|///)?$")]
    public static partial Regex Cloud();

    [GeneratedRegex(@"^VV([0-9]{3}|///)$")]
    public static partial Regex VerticalVisibility();

    [GeneratedRegex(@"^(M?[0-9]{2}|//)/(M?[0-9]{2}|//)?$")]
    public static partial Regex Temperatures();

    [GeneratedRegex(@"^(Q|A)([0-9]{4}|////)$")]
    public static partial Regex Pressure();

    [GeneratedRegex(@"^R[0-9]{2}[LCR]?/\S+$|^R/SNOCLO$|^[0-9]{8}$|^[0-9]{2}[A-Z/]{6}$")]
    public static partial Regex Runway();

    [GeneratedRegex(@"^W(?:M?[0-9]{2}|//)/(?:S|H)\S+$")]
    public static partial Regex Sea();

    [GeneratedRegex(@"^T([XN])(M?[0-9]{2})/([0-9]{2})([0-9]{2})Z$")]
    public static partial Regex ExtremeTemperature();

    [GeneratedRegex(@"^FM([0-9]{2})([0-9]{2})([0-9]{2})$")]
    public static partial Regex FromTime();

    [GeneratedRegex(@"^(FM|TL|AT)([0-9]{2})([0-9]{2})$")]
    public static partial Regex TrendTime();
}
