using System.Globalization;
using System.Text;
using DayBrief.Reports;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure.Outgoing;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Fetches METAR and TAF, keeps what is new and compares the day. One address that fails does not stop the other.</summary>
internal sealed class FetchReports(AddressFetcher fetcher, ReportStore reports, WatchDay watch, TimeProvider clock)
{
    public async Task<RunResult> RunAsync(SiteJson site, Slot slot, CancellationToken stopping)
    {
        var automation = site.Automation ?? new();
        var failures = new List<RunFailedException>();
        var added = 0;
        foreach (var (kind, template) in new[] { (ReportKind.Observation, automation.MetarAddress), (ReportKind.Forecast, automation.TafAddress) })
        {
            if (template is null)
                continue;
            try
            {
                added += reports.Add(await FetchAsync(site, kind, template, stopping));
            }
            catch (FetchException failed)
            {
                failures.Add(FetchFailure.Of(failed));
            }
            catch (RunFailedException failed)
            {
                failures.Add(failed);
            }
        }

        var raised = watch.Compare(site, slot.Date);
        if (failures.Count > 0)
            throw failures[0];
        return new(RunCode.ReportsKept, added.ToString(CultureInfo.InvariantCulture), raised.ToString(CultureInfo.InvariantCulture));
    }

    private async Task<IReadOnlyList<KeptReport>> FetchAsync(SiteJson site, ReportKind kind, string template, CancellationToken stopping)
    {
        var now = clock.GetUtcNow();
        var station = site.Automation!.ReportStation?.Trim();
        var address = AddressTemplate.Expand(template, now, station)
            ?? throw new RunFailedException(new(RunCode.FetchFailed, nameof(FetchFault.Scheme), template), mayPass: false);
        var text = Encoding.UTF8.GetString(await fetcher.FetchAsync(address, stopping));
        var found = kind == ReportKind.Observation
            ? MetarReader.ReadAll(text).Where(report => !report.IsNil).Select(report => (report.Station, report.Time, report.Raw))
            : TafReader.ReadAll(text).Where(report => !report.IsNil).Select(report => (report.Station, Time: report.Dated, report.Raw));
        var ofStation = found
            .Where(report => string.IsNullOrEmpty(station) || string.Equals(report.Station, station, StringComparison.OrdinalIgnoreCase))
            .Select(report => (report.Station, At: report.Time.NearestTo(now), report.Raw))
            .Where(report => report.At is not null)
            .Select(report => new KeptReport(site.Id!, kind, report.Station, report.At!.Value, report.Raw, address.Host, now))
            .ToArray();
        return ofStation.Length > 0 ? ofStation : throw new RunFailedException(new(RunCode.NoReports, address.Host, station ?? ""));
    }
}
