namespace DayBrief.Soundings.Formats.Csv;

/// <summary>The names that people give to quantities, in lower case without separators.</summary>
internal static class CsvNames
{
    private static readonly Dictionary<string, CsvQuantity> Quantities = Spelled(
        (CsvQuantity.Pressure, "pressure press pres prs p level lev plev pressurelevel isobaric airpressure atmosphericpressure luftdruck druck pression presion"),
        (CsvQuantity.Height, "height hght hgt heightamsl heightmsl amsl altitude altitudeamsl altitudemsl alt z geopotentialheight geopotential gph gpheight geopheight geopotheight geopotentialheightm elevation alti gpsalt gpsaltitude altgps hohe hoehe höhe"),
        (CsvQuantity.HeightAboveGround, "heightagl agl altitudeagl altagl heightaboveground"),
        (CsvQuantity.Temperature, "temperature temp t tmp tair ta airtemperature airtemp drybulb drybulbtemperature temperatur température"),
        (CsvQuantity.DewPoint, "dewpoint dewpointtemperature dewpt dwpt dpt dewp dwp td tdew taupunkt dewpointtemp tdew2 dewtemp"),
        (CsvQuantity.DewPointDepression, "dewpointdepression dewpointdep depression dpd dpdp tminustd ttd spread taupunktdifferenz"),
        (CsvQuantity.RelativeHumidity, "rh relh relativehumidity humidity relhumidity hum humid relhum relativefeuchte feuchte rhum humidityrelative"),
        (CsvQuantity.SpecificHumidity, "q specifichumidity spfh"),
        (CsvQuantity.MixingRatio, "mixingratio mixr"),
        (CsvQuantity.WindEastward, "u uwind ucomp windu ucomponent eastwardwind"),
        (CsvQuantity.WindNorthward, "v vwind vcomp windv vcomponent northwardwind"),
        (CsvQuantity.Time, "time valid validat validtime datetime timestamp utc utctime timeutc"),
        (CsvQuantity.Date, "date"),
        (CsvQuantity.Latitude, "lat latitude gpslat gpslatitude breite"),
        (CsvQuantity.Longitude, "lon lng long longitude gpslon gpslongitude gpslong länge"),
        (CsvQuantity.MovingDirection, "heading course track"),
        (CsvQuantity.MovingSpeed, "velh horizontalspeed horizontalvelocity groundspeed hspeed speedh"),
        (CsvQuantity.WindDirection, "winddir winddirection wdir wd dir direction drct dd winddirectionfrom windfrom windrichtung wdirection wnddir"),
        (CsvQuantity.WindSpeed, "windspeed wspd wspeed ws ff speed spd wind windspd windgeschwindigkeit sped wndspd"));

    /// <summary>Names that hold their unit already, as some archives write them.</summary>
    private static readonly Dictionary<string, (CsvQuantity, string)> WithUnit = new()
    {
        ["tmpc"] = (CsvQuantity.Temperature, "c"),
        ["dwpc"] = (CsvQuantity.DewPoint, "c"),
        ["sknt"] = (CsvQuantity.WindSpeed, "kt"),
        ["hpa"] = (CsvQuantity.Pressure, "hpa"),
    };

    /// <summary>The usual short names of archives, and the units that they imply; which of their names the unit goes with is read
    /// from the header, never from where it comes.</summary>
    private static readonly Dictionary<string, string> Short = new()
    {
        ["pres"] = "hpa",
        ["hght"] = "m",
        ["temp"] = "c",
        ["tmpc"] = "c",
        ["dwpt"] = "c",
        ["dwpc"] = "c",
        ["relh"] = "pct",
        ["mixr"] = "gkg",
        ["drct"] = "deg",
        ["sknt"] = "kt",
    };

    /// <summary>Whether a header is made of the usual short names: pressure, height and temperature by them.</summary>
    public static bool AreUsualShortNames(IEnumerable<string> header)
    {
        var names = header.Select(name => name.Trim().ToLowerInvariant()).ToHashSet();
        return names.Contains("pres") && names.Contains("hght") && names.Count(Short.ContainsKey) >= 4;
    }

    public static string? UnitOfShortName(string name) => Short.GetValueOrDefault(name.Trim().ToLowerInvariant());

    public static CsvQuantity? Quantity(string name) => Quantities.TryGetValue(name, out var quantity) ? quantity : null;

    public static (CsvQuantity Quantity, string Unit)? QuantityWithUnit(string name) =>
        WithUnit.TryGetValue(name, out var found) ? found : null;

    private static Dictionary<string, CsvQuantity> Spelled(params (CsvQuantity Quantity, string Names)[] rows) =>
        rows.SelectMany(row => row.Names.Split(' ').Select(name => (name, row.Quantity)))
            .ToDictionary(pair => pair.name, pair => pair.Quantity);
}
