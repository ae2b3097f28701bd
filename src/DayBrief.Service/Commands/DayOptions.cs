using System.CommandLine;
using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Commands;

/// <summary>What the verbs that compute a day take besides the sounding.</summary>
internal sealed class DayOptions
{
    private readonly Argument<string> _path = new("PATH") { Description = "The sounding, or - for standard input." };
    private readonly Option<string> _site = new("--site") { Description = "The site, a JSON file; position, elevation and time zone are required.", HelpName = "SITE.json", Required = true };
    private readonly Option<string> _date = new("--date") { Description = "The local date.", HelpName = "YYYY-MM-DD", Required = true };
    private readonly Option<DateTimeOffset?> _ascentTime = new("--ascent-time") { Description = "When the ascent was made, for one that does not say so itself.", HelpName = "YYYY-MM-DDTHH:MMZ" };
    private readonly Option<double?> _max = new("--max-temperature") { Description = "Highest screen temperature expected, °C.", HelpName = "C" };
    private readonly Option<double?> _mixed = new("--mixed-temperature") { Description = "Temperature that the mixed layer reaches, brought dry-adiabatically to the surface, °C.", HelpName = "C" };
    private readonly Option<double?> _cloud = new("--cloud") { Description = "Cloud that is there without thermals, oktas.", HelpName = "OKTAS" };
    private readonly Option<string?> _flux = new("--flux") { Description = "Surface fluxes that replace the energy balance: time,sensible_w_m2,latent_w_m2.", HelpName = "FLUX.csv" };
    private readonly Option<double?> _entrainment = new("--entrainment") { Description = "Entrainment ratio, 0 to 1 (default 0.2).", HelpName = "A" };
    private readonly Option<string?> _maximumAt = new("--maximum-at") { Description = "Local time at which the maximum is reached.", HelpName = "HH:MM" };
    private readonly Option<double?> _sinking = new("--sinking") { Description = "Sinking of the air aloft, 1/s: by this share of its height each second. Without it the air sinks gently and is cooled as fast as that warms it.", HelpName = "1/s" };
    private readonly Option<double?> _cooling = new("--cooling") { Description = "Cooling of the free air by its own radiation, K/h.", HelpName = "K/h" };
    private readonly Option<bool> _noCumulus = new("--no-cumulus") { Description = "Cumulus neither shades the ground nor carries air away (research cases)." };
    private readonly Option<string?> _air = new("--air") { Description = "Profiles by the hour, or a later ascent: the air aloft changes as they do.", HelpName = "FORECAST" };
    private readonly Option<int?> _ensemble = new("--ensemble") { Description = "Members of the ensemble, 0 for none (default 200).", HelpName = "N" };
    private readonly Option<int?> _seed = new("--seed") { Description = "Seed of the ensemble (default 1).", HelpName = "S" };

    public DayOptions()
    {
        CommandNumber.InRange(_max, "maxTemperatureC");
        CommandNumber.InRange(_mixed, "mixedTemperatureC");
        CommandNumber.InRange(_cloud, "cloudOktas");
        CommandNumber.InRange(_entrainment, "entrainment");
        CommandNumber.InRange(_sinking, "sinkingPerS");
        CommandNumber.InRange(_cooling, "coolingKPerH");
        _maximumAt.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && !TryTime(result.Tokens[0].Value, out _))
                result.AddError("--maximum-at must be a local time such as 15:30.");
        });
        _max.Validators.Add(result =>
        {
            if (result.GetResult(_mixed) is { Implicit: false })
                result.AddError("Give --max-temperature or --mixed-temperature, not both.");
        });
        _date.Validators.Add(result =>
        {
            if (!TryDate(result.Tokens.Count > 0 ? result.Tokens[0].Value : null, out _))
                result.AddError("--date must be a date such as 2026-05-21.");
        });
    }

    public void AddTo(Command command)
    {
        command.Add(_path);
        foreach (var option in new Option[] { _site, _date, _ascentTime, _max, _mixed, _cloud, _flux, _entrainment, _maximumAt, _sinking, _cooling, _noCumulus, _air, _ensemble, _seed })
            command.Add(option);
    }

    public string Path(ParseResult parsed) => parsed.GetRequiredValue(_path);

    public Site Site(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_site);
        return File.Exists(path)
            ? SiteJson.Parse(File.ReadAllText(path)).ToSite()
            : throw InvalidInputException.Field("--site", $"There is no file {path}.");
    }

    public DateOnly Date(ParseResult parsed) => TryDate(parsed.GetRequiredValue(_date), out var date) ? date : default;

    public AssumptionsJson Assumed(ParseResult parsed) => new()
    {
        MaxTemperatureC = parsed.GetValue(_max),
        MixedTemperatureC = parsed.GetValue(_mixed),
        CloudOktas = parsed.GetValue(_cloud),
        Entrainment = parsed.GetValue(_entrainment),
        MaximumAt = TryTime(parsed.GetValue(_maximumAt), out var at) ? at : null,
        SinkingPerS = parsed.GetValue(_sinking),
        CoolingKPerH = parsed.GetValue(_cooling),
        WithoutCumulus = parsed.GetValue(_noCumulus) ? true : null,
        Ensemble = parsed.GetValue(_ensemble),
        Seed = parsed.GetValue(_seed),
    };

    /// <summary>The assumptions with prescribed fluxes, if any.</summary>
    public DayAssumptions Assumptions(ParseResult parsed, Site site) =>
        Assumed(parsed).ToAssumptions() with
        {
            Flux = parsed.GetValue(_flux) is { } flux ? FluxFile.Read(flux, site.TimeZone) : null,
            Air = parsed.GetValue(_air) is { } air ? AirFile.Read(air, site) : [],
        };

    public Task<Sounding> SoundingAsync(ParseResult parsed, CancellationToken stopping) => SoundingAsync(parsed, Path(parsed), stopping);

    /// <summary>The ascent of one of several files.</summary>
    public async Task<Sounding> SoundingAsync(ParseResult parsed, string path, CancellationToken stopping)
    {
        return Timed(AscentChoice.For(await CommandInput.ReadAsync(path, stopping), CommandInput.NameOf(path), index: null, Site(parsed), Date(parsed)), parsed.GetValue(_ascentTime));
    }

    private static Sounding Timed(Sounding sounding, DateTimeOffset? said) => (said, sounding.Source) switch
    {
        (null, _) => sounding,
        (_, { ValidAt: null, DayAndHour: null }) => sounding.With(sounding.Source with { ValidAt = said }),
        _ => throw InvalidInputException.Field("--ascent-time", "The ascent says itself when it was made; leave this out."),
    };

    private static bool TryTime(string? text, out TimeOnly time) =>
        TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out time);

    private static bool TryDate(string? text, out DateOnly date) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date);
}
