using DayBrief.Texts;

namespace DayBrief.Logs.Igc;

/// <summary>What is said about what was counted while reading.</summary>
internal static class IgcRemarks
{
    public static Words? Of(string code, int count)
    {
        switch (code)
        {
            case "first-line":
                return "The first line does not name the recorder (no A record).";
            case "extensions":
                return $"{count} line(s) that list the recorder's further values (I record) could not be read; those values are not used.";
            case "dates":
                return $"{count} further date(s) stand in the file; each counts for the fixes after it.";
            case "malformed":
                return $"{count} position(s) are malformed and were left out.";
            case "no-3d":
                return $"{count} position(s) are marked as without a height from satellites.";
            case "time-back":
                return $"{count} position(s) go back in time and were left out.";
            case "time-again":
                return $"{count} position(s) repeat the time of the one before and were left out.";
            default:
                return null;
        }
    }
}
