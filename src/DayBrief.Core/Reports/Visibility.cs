namespace DayBrief.Reports;

/// <summary>How far one can see.</summary>
/// <param name="Metres">Metres; statute miles are converted (1,609.344 m [SI]).</param>
/// <param name="IsOrMore">At least this (9999, P6SM).</param>
/// <param name="IsOrLess">Less than this (M1/4SM).</param>
public readonly record struct Visibility(double Metres, bool IsOrMore = false, bool IsOrLess = false);
