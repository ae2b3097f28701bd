using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Parts A and C of FM 32: winds at runs of standard levels, and the strongest wind.</summary>
/// <remarks>[WMO306] FM 32, section 2: 44nPP or 55nPP, then n winds from the standard level PP upwards.</remarks>
internal sealed class PilotStandardPart(TempPart part, TempHeader header, TempAscent ascent) : TempReading(part, header, ascent)
{
    protected override void Element()
    {
        var group = Current;
        if (group.Text[..2] is "44" or "55" && group.Number(2, 1) is >= 1 and var count)
        {
            Run(group, count);
        }
        else if (group.Text[..2] is "77" or "66" && group.Text[2..] != "999" && Ahead(1) is { IsWhole: true } wind)
        {
            Add(WithWind(
                new(group.Origin) { PressureHpa = TempElements.Pressure(group, Part.IsUpper), Rank = TempRank.Pilot }, wind));
            At += 2;
        }
        else
        {
            At++;
        }
    }

    private void Run(TempGroup group, int count)
    {
        var levels = StandardLevel.Of(Part.Letter).SkipWhile(level => level.Figures != group.Text[3..]).Take(count).ToArray();
        At++;
        foreach (var level in levels)
        {
            if (Done)
            {
                Cut(group);
                return;
            }

            if (Current.IsWhole)
            {
                Add(WithWind(new(Current.Origin) { PressureHpa = level.Hpa, Rank = TempRank.Pilot }, Current));
            }

            At++;
        }
    }
}

/// <summary>Parts B and D of FM 32 with fixed heights: 9tuuu, then a wind for each u.</summary>
/// <remarks>[WMO306] FM 32, section 4: 9 = units of 300 m, 8 = units of 500 m; where speeds are in knots the unit is
/// 1,000 ft (practice of WMO Region IV; from memory). Height 0 is the ground, whose height the report does not tell.</remarks>
internal sealed class PilotHeightsPart(TempPart part, TempHeader header, TempAscent ascent) : SignificantPart(part, header, ascent)
{
    private bool _byPressure;

    protected override void Element()
    {
        var group = Current;
        _byPressure |= group.Text == "21212";
        if (!_byPressure && group.Text[0] is '9' or '8' && group.Number(1, 1) is { } tens)
        {
            At++;
            for (var u = 2; u < 5; u++)
            {
                Wind(group, u, tens);
            }
        }
        else
        {
            base.Element();
        }
    }

    private void Wind(TempGroup heights, int figure, int tens)
    {
        if (heights.Number(figure, 1) is not { } units)
        {
            return;
        }

        if (Done)
        {
            Cut(heights);
            return;
        }

        var group = Current;
        At++;
        if (group.IsWhole && TempElements.Wind(group) is { } wind && (10 * tens) + units is > 0 and var steps)
        {
            Ascent.AddWind(Height(heights, steps), Units.Wind.From(wind.FromDeg, Speed.FromMetresPerSecond(MetresPerSecond(wind.Speed))));
        }
    }

    private Altitude Height(TempGroup heights, int steps) =>
        heights.Text[0] == '8' ? Altitude.FromMetres(500.0 * steps)
        : Header.InKnots ? Altitude.FromFeet(1000.0 * steps)
        : Altitude.FromMetres(300.0 * steps);
}
