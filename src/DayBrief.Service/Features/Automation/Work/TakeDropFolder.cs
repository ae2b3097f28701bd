using System.Globalization;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Takes the ascents that lie in a site's folder, oldest first: kept ones go to <c>taken</c>, others to <c>refused</c>
/// with a text that says why.</summary>
internal sealed class TakeDropFolder(DropFolders folders, SoundingIntake intake)
{
    public RunResult Run(SiteJson site, Slot slot)
    {
        var (taken, refused) = (0, 0);
        foreach (var file in folders.Settled(site.Id!))
        {
            if (Fault(site, slot, file) is not { } fault)
            {
                folders.Move(file, site.Id!, "taken");
                taken++;
                continue;
            }

            File.WriteAllText(folders.Move(file, site.Id!, "refused") + ".txt", fault + Environment.NewLine);
            refused++;
        }

        return new(RunCode.FilesTaken, taken.ToString(CultureInfo.InvariantCulture), refused.ToString(CultureInfo.InvariantCulture));
    }

    private string? Fault(SiteJson site, Slot slot, FileInfo file)
    {
        if (file.Length > SoundingBody.MaxBytes)
            return $"The file is larger than {SoundingBody.MaxBytes / 1024 / 1024} MB.";
        try
        {
            intake.Take(site, slot.Date, File.ReadAllBytes(file.FullName), file.Name, file.Name);
            return null;
        }
        catch (InvalidSoundingException refused)
        {
            return string.Join(Environment.NewLine, refused.Refusals.Select(refusal => refusal.Message));
        }
    }
}
