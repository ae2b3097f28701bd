namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Parts A and C: surface, standard levels, tropopause, strongest wind.</summary>
/// <remarks>[WMO306] FM 35, sections 2 to 4.</remarks>
internal sealed class StandardPart(TempPart part, TempHeader header, TempAscent ascent) : TempReading(part, header, ascent)
{
    private readonly IReadOnlyList<StandardLevel> _levels = StandardLevel.Of(part.Letter);
    private int _last = -1;
    private bool _goesOn;

    protected override void Element()
    {
        var group = Current;
        var figures = group.Text[..2];
        if (figures == "99" && _last < 0)
        {
            Level(group, TempElements.Pressure(group, Part.IsUpper), null, isSurface: true);
        }
        else if (figures is "88")
        {
            Tropopause(group);
        }
        else if (figures is "77" or "66")
        {
            StrongestWind(group);
        }
        else
        {
            Standard(group, figures);
        }
    }

    // Id tells how far the winds go: a part that ends below is cut, even between two groups.
    protected override void EndUnmarked(TempGroup last)
    {
        if (Ascent.Cut is null && Header.WindTop is not null && (_last < 0 || WindPresence.IsBelowTop(_levels[_last].Hpa, Part.Letter, Header.WindTop)))
        {
            Ascent.CutAt(last.Origin, Part.Name);
        }
        else
        {
            base.EndUnmarked(last);
        }
    }

    private void Standard(TempGroup group, string figures)
    {
        var index = -1;
        for (var i = 0; i < _levels.Count && index < 0; i++)
        {
            index = _levels[i].Figures == figures ? i : -1;
        }

        if (index < 0)
        {
            Ascent.Unreadable(group, "this group begins no level here; it is left out.");
            At++;
            return;
        }

        if (index <= _last)
        {
            throw group.Origin.Refuse("pressure-not-falling", $"the level {_levels[index].Hpa} hPa comes after {_levels[_last].Hpa} hPa. Check the groups before it.", _levels[index].Hpa);
        }

        _last = index;
        var level = _levels[index];
        Level(group, level.Hpa, group.Number(2, 3) is { } hhh ? level.HeightM(hhh) : null, isSurface: false);
    }

    private void Level(TempGroup group, double? pressureHpa, double? heightM, bool isSurface)
    {
        if (Ahead(1) is not { IsWhole: true } temperature)
        {
            Incomplete(group);
            return;
        }

        var level = new ReadLevel(group.Origin) { PressureHpa = pressureHpa, HeightM = heightM, Rank = TempRank.Standard };
        var wind = Ahead(2);
        switch (WindPresence.Of(Part, Header, _last, isSurface, _goesOn, wind))
        {
            case WindPresence.Kind.Lost:
                Ascent.Unreadable(group, $"a group of this level is missing before {wind?.Text}; its temperature and wind are left out.");
                Add(level);
                At += 2;
                break;
            case WindPresence.Kind.Cut:
                Add(WithTemperature(level, temperature));
                Cut(wind ?? temperature);
                break;
            case WindPresence.Kind.Given:
                _goesOn |= !isSurface && wind!.Value.Text != "/////" && !WindPresence.IsDue(_levels[_last], Part, Header);
                Add(WithWind(WithTemperature(level, temperature), wind!.Value));
                At += 3;
                break;
            default:
                Add(WithTemperature(level, temperature));
                At += 2;
                break;
        }
    }

    private void Tropopause(TempGroup group)
    {
        if (group.Text == "88999")
        {
            At++;
        }
        else if (Ahead(1) is { IsWhole: true } temperature && Ahead(2) is { IsWhole: true } wind)
        {
            var level = new ReadLevel(group.Origin) { PressureHpa = TempElements.Pressure(group, Part.IsUpper), Rank = TempRank.Special };
            Add(WithWind(WithTemperature(level, temperature), wind));
            At += 3;
        }
        else
        {
            Incomplete(group);
        }
    }

    private void StrongestWind(TempGroup group)
    {
        if (group.Text[2..] == "999")
        {
            At++;
        }
        else if (Ahead(1) is { IsWhole: true } wind)
        {
            var level = new ReadLevel(group.Origin) { PressureHpa = TempElements.Pressure(group, Part.IsUpper), Rank = TempRank.Special };
            Add(WithWind(level, wind));
            At += Ahead(2) is { IsWhole: true, OpensSection: false } shear && shear.Text[0] == '4' ? 3 : 2;
        }
        else
        {
            Incomplete(group);
        }
    }

    // Either the message ends here, or a group inside is damaged: then reading goes on after the damage.
    private void Incomplete(TempGroup group)
    {
        if (Ahead(1) is null || (Ahead(2) is null && !Part.Ended))
        {
            Cut(Ahead(1) ?? group);
        }
        else
        {
            Ascent.Unreadable(group, "this level has a damaged group; it is left out.");
            At += 2;
        }
    }
}
