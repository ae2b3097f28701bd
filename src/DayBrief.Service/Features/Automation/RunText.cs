using System.Globalization;
using DayBrief.Service.Infrastructure.Outgoing;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Automation;

/// <summary>How a run ended, in words.</summary>
internal static class RunText
{
    public static string Of(RunResult result, Language language)
    {
        string Figure(int index) => index < result.Figures.Count ? result.Figures[index] : "?";
        return result.Code switch
        {
            RunCode.SoundingKept => language.Say($"Ascent of {Figure(0)}, {Figure(1)}, kept from {Figure(2)}."),
            RunCode.SoundingKnown => language.Say($"The same ascent as before came from {Figure(0)}."),
            RunCode.SoundingOld => language.Say($"The ascent that stands there is of {Figure(0)}; that of {Figure(1)} is not there yet."),
            RunCode.ContentRefused => language.Say($"What came is no usable ascent: {Figure(0)}"),
            RunCode.FilesTaken => language.Say($"Files taken: {Figure(0)}, refused: {Figure(1)}."),
            RunCode.DraftMade => language["Draft prepared."],
            RunCode.DraftThere => language["The day has a brief already."],
            RunCode.NoSounding => language["No ascent of the day has come yet."],
            RunCode.DayRefused => language.Say($"The day cannot be computed: {Figure(0)}"),
            RunCode.Reminded => language["Not signed; reminder raised."],
            RunCode.Signed => language["Signed in time."],
            RunCode.ReportsKept => language.Say($"New reports: {Figure(0)}, new flags: {Figure(1)}."),
            RunCode.NoReports => language.Say($"No readable report of the station came from {Figure(0)}."),
            RunCode.FetchFailed => Of(Enum.Parse<FetchFault>(Figure(0)), Figure(1), language),
            RunCode.BackedUp => language.Say($"{Figure(0)}, {Kilobytes(Figure(1)):#,0} kB."),
            RunCode.Purged => language.Say($"Removed: drafts {Figure(0)}, ascents {Figure(1)}, reports and flags {Figure(2)}, runs {Figure(3)}."),
            RunCode.Broken => language.Say($"It broke: {Figure(0)}"),
            RunCode.NothingToDo => language["Nothing is set for this."],
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string Of(FetchFault fault, string about, Language language) => fault switch
    {
        FetchFault.Scheme => language.Say($"Only http and https are fetched, and never http after https: {about}."),
        FetchFault.Credentials => language.Say($"The address of {about} holds a user name or password."),
        FetchFault.Port => language.Say($"Port {about} belongs to another protocol."),
        FetchFault.Refused => language.Say($"{about} lies in the own network or is no host; the administrator has not allowed it."),
        FetchFault.Redirects => language.Say($"Too many redirects, or one to nowhere, from {about}."),
        FetchFault.Name => language.Say($"The name {about} is not known."),
        FetchFault.Connection => language.Say($"No connection to {about}."),
        FetchFault.Status => language.Say($"The server answered with the error {about}."),
        FetchFault.TimeOut => language.Say($"{about} was too slow."),
        FetchFault.Size => language.Say($"{about} sent too much."),
        FetchFault.Broken => language.Say($"The answer of {about} broke off."),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static double Kilobytes(string bytes) => double.Parse(bytes, CultureInfo.InvariantCulture) / 1000;
}
