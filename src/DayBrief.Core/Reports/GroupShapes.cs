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

    /// <summary>After the word for the kind and the station the zone may be missing.</summary>
    [GeneratedRegex(@"^([0-9]{2})([0-9]{2})([0-9]{2})Z?$")]
    public static partial Regex HeadTime();

    [GeneratedRegex(@"^[0-9]{6}$")]
    public static partial Regex PlainTime();

    /// <summary>TTAAii of an abbreviated heading.</summary>
    [GeneratedRegex(@"^[A-Z]{4}[0-9]{2}$")]
    public static partial Regex Heading();

    [GeneratedRegex(@"^[0-9]{4}[-/][0-9]{2}[-/][0-9]{2}$")]
    public static partial Regex ArchiveDate();

    [GeneratedRegex(@"^[0-9]{2}:[0-9]{2}(:[0-9]{2})?Z?$")]
    public static partial Regex ArchiveTime();

    [GeneratedRegex(@"^(CC|RR|AA)[A-Z]$")]
    public static partial Regex Correction();

    [GeneratedRegex(@"^([0-9]{2})([0-9]{2})/([0-9]{2})([0-9]{2})$")]
    public static partial Regex Period();

    /// <summary>Day and two hours, as before 2008.</summary>
    [GeneratedRegex(@"^([0-9]{2})([0-9]{2})([0-9]{2})$")]
    public static partial Regex OldPeriod();

    /// <summary>Two hours.</summary>
    [GeneratedRegex(@"^(?:[01][0-9]|2[0-4]){2}$")]
    public static partial Regex PlainHours();

    [GeneratedRegex(@"^([0-9]{3}|VRB|///)P?([0-9]{2,3}|//)(?:GP?([0-9]{2,3}|//))?(KTS?|MPS|KMH)$")]
    public static partial Regex Wind();

    [GeneratedRegex(@"^([0-9]{3})V([0-9]{3})$")]
    public static partial Regex Varying();

    [GeneratedRegex(@"^([0-9]{4})M?(NDV|N|NE|E|SE|S|SW|W|NW)?$")]
    public static partial Regex Metres();

    [GeneratedRegex(@"^([0-9]{1,2})KM(NDV|N|NE|E|SE|S|SW|W|NW)?$")]
    public static partial Regex Kilometres();

    /// <summary>"11/2SM" is 1½: a whole number may be glued to the fraction after it.</summary>
    [GeneratedRegex(@"^([PM])?([0-9]{1,3})(?:/([0-9]{1,2}))?SM$")]
    public static partial Regex Miles();

    /// <summary>As [WMO306] orders a weather group: intensity or vicinity, one descriptor, up to three phenomena.</summary>
    [GeneratedRegex(@"^(?:\+|-|VC)?(?:MI|BC|PR|DR|BL|SH|TS|FZ)?(?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PO|SQ|FC|SS|DS){0,3}$")]
    public static partial Regex RegularWeather();

    [GeneratedRegex(@"^RE(?:(?:MI|BC|PR|DR|BL|SH|TS|FZ)?(?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|FG|VA|DU|SA|SQ|FC|SS|DS){0,3}|//)$")]
    public static partial Regex Recent();

    [GeneratedRegex(@"^(FEW|SCT|BKN|OVC|///)([0-9]{3}|///)?(CB|TCU|///|CU|SC|ST|SF|CF|AC|AS|NS|CI|CC|CS|ACC)?$")]
    public static partial Regex Cloud();

    [GeneratedRegex(@"^VV([0-9]{3}|///)$")]
    public static partial Regex VerticalVisibility();

    [GeneratedRegex(@"^([M-]?[0-9]{2}|//|XX|MM)/([M-]?[0-9]{2}|//|XX|MM)?$")]
    public static partial Regex Temperatures();

    [GeneratedRegex(@"^(Q|A|QNH)([0-9]{4}|////)(?:/(?:[0-9.]{4,5}|////))?$")]
    public static partial Regex Pressure();

    [GeneratedRegex(@"^R[0-9]{2}[LCR]?/\S+$|^R/SNOCLO$|^SNOCLO$|^[0-9]{2}[0-9/]{6}$|^[0-9]{2}(?:[A-Z/]{6}|CLRD[0-9/]{2})$")]
    public static partial Regex Runway();

    [GeneratedRegex(@"^W(?:M?[0-9]{2}|//)/(?:S|H)\S+$")]
    public static partial Regex Sea();

    /// <summary>Older forms leave out the day, the zone or both.</summary>
    [GeneratedRegex(@"^T([XN])([M-]?[0-9]{1,2})/([0-9]{2})?([0-9]{2})Z?$")]
    public static partial Regex ExtremeTemperature();

    [GeneratedRegex(@"^FM([0-9]{2})([0-9]{2})([0-9]{2})Z?$")]
    public static partial Regex FromTime();

    [GeneratedRegex(@"^FM[0-9]{2,6}Z?$")]
    public static partial Regex AnyFromTime();

    [GeneratedRegex(@"^(FM|TL|AT)([0-9]{2})([0-9]{2})Z?$")]
    public static partial Regex TrendTime();

    [GeneratedRegex(@"^PROB([0-9]{2})$")]
    public static partial Regex Probability();

    /// <summary>States of an aerodrome in colours, as military stations add them.</summary>
    [GeneratedRegex(@"^(?:BLACK)?(?:BLU\+?|WHT\+?|GRN\+?|YLO[12]?\+?|AMB\+?|RED\+?)(?:/(?:BLU\+?|WHT|GRN|YLO[12]?|AMB|RED))?$|^BLACK$")]
    public static partial Regex Colour();
}
