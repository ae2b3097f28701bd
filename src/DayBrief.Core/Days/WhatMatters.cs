using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>How much one uncertain input moves the day.</summary>
/// <param name="Input">Stable name for programs, such as "max-temperature".</param>
/// <param name="Share">Share of the spread of the greatest depth that it explains, 0 to 1.</param>
/// <param name="DepthM">Change of the greatest depth for the step that the words name, m.</param>
/// <param name="Words">In words.</param>
public sealed record WhatMatters(string Input, double Share, double DepthM, Phrase Words)
{
    /// <summary>The two inputs that explain most of the ensemble's spread in depth.</summary>
    /// <remarks>Squared correlation of each input, drawn independently, with the greatest depth; the change is the
    /// regression slope times the step.</remarks>
    internal static ImmutableArray<WhatMatters> Of(Ensemble ensemble, DayFrame frame, double maxScreenC)
    {
        if (ensemble.Members.Length < 20)
            return [];
        var depth = ensemble.Headlines.Select(headline => double.IsNaN(headline.MaxDepthM) ? 0 : headline.MaxDepthM).ToArray();
        return [.. Inputs(frame.Assumptions, maxScreenC)
            .Select(input => Weigh(input, [.. ensemble.Members.Select(input.Value)], depth))
            .OrderByDescending(input => input.Share)
            .Take(2)
            .Where(input => input.Share > 0.01)];
    }

    private static IEnumerable<Uncertain> Inputs(DayAssumptions assumptions, double maxScreenC)
    {
        if ((assumptions.MixedTemperature ?? assumptions.MaxTemperature) is not null)
        {
            yield return new("max-temperature", member => member.MaxTemperatureK, -1, Phrase.Of($"each degree below {Math.Round(maxScreenC):0} °C"));
        }
        else if (assumptions.Flux is null)
        {
            yield return new("cloud", member => member.CloudOktas, 1, Phrase.Of($"each okta more of cloud"));
            yield return new("ground-wetness", member => member.Moisture, 0.2, Phrase.Of($"ground one step wetter than assumed"));
        }

        yield return new("dew-point", member => member.DewPointK, 1, Phrase.Of($"each degree more of dew point"));
        yield return new("air-aloft", member => member.AloftK, 1, Phrase.Of($"each degree that the air aloft is warmer than in the ascent"));
        yield return new("entrainment", member => Math.Log(member.EntrainmentFactor), 0.3, Phrase.Of($"a third more stirring at the top"));
        yield return new("subsidence", member => member.DivergencePerSecond, 3.5e-6, Phrase.Of($"air sinking 3.5 mm/s more at 1000 m"));
    }

    private static WhatMatters Weigh(Uncertain input, double[] x, double[] depth)
    {
        var (meanX, meanY) = (x.Average(), depth.Average());
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (depth[i] - meanY);
            yy += (depth[i] - meanY) * (depth[i] - meanY);
        }

        var share = xx > 0 && yy > 0 ? xy * xy / (xx * yy) : 0;
        var change = xx > 0 ? xy / xx * input.Step : 0;
        var depthChange = Height.FromMetres(Math.Abs(change));
        return new(input.Name, share, change, change < 0
            ? Phrase.Of($"{input.Words} costs about {depthChange:change} of depth")
            : Phrase.Of($"{input.Words} gains about {depthChange:change} of depth"));
    }

    private sealed record Uncertain(string Name, Func<DayMember, double> Value, double Step, Phrase Words);
}
