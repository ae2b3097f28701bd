using System.CommandLine;
using System.Text.Json;
using DayBrief.Days;
using DayBrief.Flight.Gliders;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Makes the whole brief into files, without a service or a store.</summary>
internal static class BriefCommand
{
    private static readonly Option<string?> PdfOut = new("--pdf") { Description = "Write the A4 sheet as PDF.", HelpName = "OUT" };
    private static readonly Option<string?> HtmlOut = new("--html") { Description = "Write the phone page, complete in one file.", HelpName = "OUT" };
    private static readonly Option<string?> JsonOut = new("--json") { Description = "Write the brief as JSON.", HelpName = "OUT" };
    private static readonly Option<string?> PreparedBy = new("--prepared-by") { Description = "Who prepares it.", HelpName = "NAME" };
    private static readonly Option<DateTimeOffset?> PreparedAt = new("--prepared-at") { Description = "When it is prepared; without it the brief says that this is not known.", HelpName = "YYYY-MM-DDTHH:MMZ" };
    private static readonly GliderOption Flown = new("What page and PDF tell each group how to fly; the JSON has all classes.") { DefaultValueFactory = _ => GenericGlider.NameOf(GliderClass.Trainer) };

    public static Command Create()
    {
        var options = new DayOptions();
        var command = new Command("brief", "Make the brief; write it to the files named, or as JSON to standard output.");
        options.AddTo(command);
        foreach (var option in new Option[] { PdfOut, HtmlOut, JsonOut, PreparedBy, PreparedAt, Flown })
            command.Add(option);
        command.SetAction((parsed, stopping) =>
            CommandInput.RefusableAsync(parsed, options.Path(parsed), () => RunAsync(options, parsed, stopping)));
        return command;
    }

    private static async Task RunAsync(DayOptions options, ParseResult parsed, CancellationToken stopping)
    {
        var made = await MakeAsync(options, parsed, stopping);
        var reader = Reader.Of(made.Brief.Site, language: Languages.Language.Named(made.Brief.Site.Language));
        var desk = new TechniqueDesk();
        var json = JsonSerializer.Serialize(BriefJson.WithTechnique(made, desk, stopping), Json.Indented);
        var glider = Flown.Of(parsed);
        var groups = Enum.GetValues<Experience>()
            .Select(group => TechniqueView.Now(made.Brief, new() { Experience = group, Glider = glider }, reader.Figures, desk, stopping)).OfType<TechniqueView>().ToArray();
        var now = made.Inputs.PreparedAt;
        if (parsed.GetValue(PdfOut) is { } pdf)
            await File.WriteAllBytesAsync(pdf, PrintBrief.Pdf(made, [BriefSheet.Draw(made, reader, address: null, now), .. groups.Select(view => PrintTechnique.Draw(made, view, now, reader))]), stopping);
        if (parsed.GetValue(HtmlOut) is { } html)
            await File.WriteAllTextAsync(html, await StandalonePage.RenderAsync(made, reader, now, groups: groups), stopping);
        if (parsed.GetValue(JsonOut) is { } file)
            await File.WriteAllTextAsync(file, json, stopping);
        if (parsed.GetValue(PdfOut) is null && parsed.GetValue(HtmlOut) is null && parsed.GetValue(JsonOut) is null)
            await parsed.InvocationConfiguration.Output.WriteLineAsync(json.AsMemory(), stopping);
    }

    private static async Task<MadeBrief> MakeAsync(DayOptions options, ParseResult parsed, CancellationToken stopping)
    {
        var site = options.Site(parsed);
        var date = options.Date(parsed);
        var sounding = await options.SoundingAsync(parsed, stopping);
        sounding = sounding.With(sounding.Source with
        {
            ValidAt = sounding.Source.ValidAt ?? sounding.Source.DayAndHour?.LatestUpTo(date),
        });
        var preparedAt = parsed.GetValue(PreparedAt);
        var brief = Brief.Prepare(new()
        {
            Sounding = sounding,
            Site = site,
            Date = date,
            Assumptions = options.Assumptions(parsed, site),
            PreparedBy = parsed.GetValue(PreparedBy),
            PreparedAt = preparedAt,
        });
        var inputs = new BriefInputs
        {
            SoundingId = "",
            Site = SiteJson.Of(site),
            Date = date,
            PreparedBy = parsed.GetValue(PreparedBy),
            // Where nobody says when, the page is drawn as of its ascent, and tells no time of preparation.
            PreparedAt = preparedAt ?? sounding.Source.ValidAt ?? new DateTimeOffset(date, TimeOnly.MinValue, TimeSpan.Zero),
            Assumptions = options.Assumed(parsed),
        };
        return new(null, inputs, brief);
    }
}
