namespace DayBrief.Soundings.Formats.Csv;

/// <summary>The names that people give to quantities, in lower case without separators.</summary>
internal static class CsvNames
{
    private static readonly Dictionary<string, CsvQuantity> Quantities = Spelled(
        (CsvQuantity.Pressure, "pressure press pres prs p airpressure atmosphericpressure luftdruck druck pression presion"),
        (CsvQuantity.Height, "height hght hgt heightamsl heightmsl amsl altitude altitudeamsl altitudemsl alt z geopotentialheight geopotential gph geopheight elevation hohe hoehe höhe"),
        (CsvQuantity.HeightAboveGround, "heightagl agl altitudeagl altagl heightaboveground"),
        (CsvQuantity.Temperature, "temperature temp t tmp tair ta airtemperature airtemp drybulb drybulbtemperature temperatur température"),
        (CsvQuantity.DewPoint, "dewpoint dewpointtemperature dewpt dwpt dewp dwp td tdew taupunkt"),
        (CsvQuantity.DewPointDepression, "dewpointdepression dewpointdep depression dpd dpdp tminustd ttd spread taupunktdifferenz"),
        (CsvQuantity.RelativeHumidity, "rh relh relativehumidity humidity relhumidity hum relativefeuchte feuchte"),
        (CsvQuantity.SpecificHumidity, "q specifichumidity spfh"),
        (CsvQuantity.MixingRatio, "mixingratio mixr"),
        (CsvQuantity.WindEastward, "u uwind windu ucomponent eastwardwind"),
        (CsvQuantity.WindNorthward, "v vwind windv vcomponent northwardwind"),
        (CsvQuantity.Time, "time valid validat validtime datetime"),
        (CsvQuantity.WindDirection, "winddir winddirection wdir wd dir direction drct dd winddirectionfrom windfrom windrichtung"),
        (CsvQuantity.WindSpeed, "windspeed wspd wspeed ws ff speed spd wind windspd windgeschwindigkeit"));

    /// <summary>Names that hold their unit already, as some archives write them.</summary>
    private static readonly Dictionary<string, (CsvQuantity, string)> WithUnit = new()
    {
        ["tmpc"] = (CsvQuantity.Temperature, "c"),
        ["dwpc"] = (CsvQuantity.DewPoint, "c"),
        ["sknt"] = (CsvQuantity.WindSpeed, "kt"),
        ["hpa"] = (CsvQuantity.Pressure, "hpa"),
    };

    public static CsvQuantity? Quantity(string name) => Quantities.TryGetValue(name, out var quantity) ? quantity : null;

    public static (CsvQuantity Quantity, string Unit)? QuantityWithUnit(string name) =>
        WithUnit.TryGetValue(name, out var found) ? found : null;

    private static Dictionary<string, CsvQuantity> Spelled(params (CsvQuantity Quantity, string Names)[] rows) =>
        rows.SelectMany(row => row.Names.Split(' ').Select(name => (name, row.Quantity)))
            .ToDictionary(pair => pair.name, pair => pair.Quantity);
}
