using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Values at the ground that are possible but hardly ever met where people fly: a slip of the keys is likelier.</summary>
/// <remarks>The records are 56.7 and −89.2 °C, and a dew point of 35 °C [WMOExtremes]; how far inside them one asks is a choice.</remarks>
internal static class ImplausibleGround
{
    private const double HotC = 45;
    private const double ColdC = -40;
    private const double SultryC = 30;

    public static void Check(IReadOnlyList<ColumnLevel> column, RemarkList remarks)
    {
        var ground = column[0];
        if (ground.TemperatureC is > HotC or < ColdC)
        {
            remarks.Ask(
                "value-implausible",
                $"{ground.TemperatureC:0.0} °C at the ground ({ground.PressureHpa:0.#} hPa) hardly occurs. Is it right?",
                ground.PressureHpa);
        }

        if (ground.DewPointC is > SultryC)
        {
            remarks.Ask(
                "value-implausible",
                $"A dew point of {ground.DewPointC:0.0} °C at the ground ({ground.PressureHpa:0.#} hPa) hardly occurs. Is it right?",
                ground.PressureHpa);
        }
    }
}
