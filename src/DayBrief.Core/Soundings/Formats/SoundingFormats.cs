using DayBrief.Soundings.Formats.Bufr;
using DayBrief.Soundings.Formats.Csv;
using DayBrief.Soundings.Formats.Igra;
using DayBrief.Soundings.Formats.Listing;
using DayBrief.Soundings.Formats.Temp;
using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Soundings.Formats;

/// <summary>Every format, most distinctive first. A new format is a folder and one line here.</summary>
internal static class SoundingFormats
{
    public static IReadOnlyList<SoundingFormat> All { get; } =
    [
        BufrReport.Format,
        JsonSounding.Format,
        IgraFile.Format,
        TempReport.Format,
        CsvSounding.Format,
        ListingSounding.Format,
    ];
}
