using DayBrief.Days;
using DayBrief.Scores;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Verifying;

/// <summary>One figure of one day, told and true; either may be missing.</summary>
internal sealed record VerifiedFigure(string Name, Told? Told, double? True);

/// <summary>One day, computed from its morning ascent alone and held against what came true.</summary>
internal sealed record VerifiedDay(DateOnly Date, IReadOnlyList<VerifiedFigure> Figures, string? Problem = null)
{
    /// <summary>Computes and compares a day; one that cannot be used says why and is left out of the scores.</summary>
    public static VerifiedDay Of(DayFiles files, Site site, DayAssumptions assumptions)
    {
        try
        {
            var morning = AscentChoice.For(File.ReadAllBytes(files.Morning), Path.GetFileName(files.Morning), index: null, site, files.Date);
            var truth = DayTruth.Of(files, site);
            var told = new DayTold(ConvectiveDay.Compute(morning, site, files.Date, assumptions), morning, truth);
            return new(files.Date,
            [
                new("depthM", told.DepthM, truth.DepthM?.Value),
                new("topM", told.TopM, truth.TopM?.Value),
                new("baseM", told.BaseM, truth.BaseM?.Value),
                new("climbMs", told.ClimbMs, truth.ClimbMs?.Value),
                new("firstMin", told.FirstMin, truth.FirstMin?.Value),
                new("lastMin", told.LastMin, truth.LastMin?.Value),
            ]);
        }
        catch (Exception refused) when (refused is InvalidSoundingException or InvalidInputException)
        {
            return new(files.Date, [], refused.Message);
        }
    }
}
