using System.CommandLine;
using System.Text.Json;
using DayBrief.Days;
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

    public static Command Create()
    {
        var options = new DayOptions();
        var command = new Command("brief", "Make the brief; write it to the files named, or as JSON to standard output.");
        options.AddTo(command);
        foreach (var option in new[] { PdfOut, HtmlOut, JsonOut, PreparedBy })
            command.Add(option);
        command.SetAction((parsed, stopping) =>
            CommandInput.RefusableAsync(parsed, options.Path(parsed), () => RunAsync(options, parsed, stopping)));
        return command;
    }

    private static async Task RunAsync(DayOptions options, ParseResult parsed, CancellationToken stopping)
    {
        var made = await MakeAsync(options, parsed, stopping);
        var reader = Reader.Of(made.Brief.Site, language: Languages.Language.Named(made.Brief.Site.Language));
        var json = JsonSerializer.Serialize(BriefJson.WithTechnique(made, new TechniqueDesk(), stopping), Json.Indented);
        if (parsed.GetValue(PdfOut) is { } pdf)
            await File.WriteAllBytesAsync(pdf, PrintBrief.Pdf(made, BriefSheet.Draw(made, reader, address: null, made.Brief.PreparedAt)), stopping);
        if (parsed.GetValue(HtmlOut) is { } html)
            await File.WriteAllTextAsync(html, await StandalonePage.RenderAsync(made, reader, made.Brief.PreparedAt), stopping);
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
        // The time of preparation is the ascent's, so that the same input makes the same file.
        var preparedAt = sounding.Source.ValidAt ?? new DateTimeOffset(date, TimeOnly.MinValue, TimeSpan.Zero);
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
            PreparedAt = preparedAt,
            Assumptions = options.Assumed(parsed),
        };
        return new(null, inputs, brief);
    }
}
