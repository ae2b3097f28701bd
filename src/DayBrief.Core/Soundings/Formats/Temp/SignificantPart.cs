namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Parts B and D: significant levels of temperature and humidity, and after 21212 those of wind.</summary>
/// <remarks>[WMO306] FM 35, sections 5 and 6. Levels are numbered 00 (surface), 11, 22 … 99, 11 …</remarks>
internal class SignificantPart(TempPart part, TempHeader header, TempAscent ascent) : TempReading(part, header, ascent)
{
    private bool _winds;
    private int _number = -1;
    private double _lastHpa = double.PositiveInfinity;

    protected override void Element()
    {
        var group = Current;
        if (group.Text == "21212")
        {
            (_winds, _number, _lastHpa) = (true, -1, double.PositiveInfinity);
            At++;
        }
        else if (Begins(group, out var pressureHpa))
        {
            Level(group, pressureHpa);
        }
        else
        {
            Ascent.Unreadable(group, "this group begins no level here; it is left out.");
            At++;
        }
    }

    // A lost group shifts everything; a group that has the number that is due, or a lower pressure, finds the way back.
    private bool Begins(TempGroup group, out double pressureHpa)
    {
        pressureHpa = TempElements.Pressure(group, Part.IsUpper) ?? 0;
        if (group.Text[0] != group.Text[1] || group.Text[0] == '/' || pressureHpa <= 0)
        {
            return false;
        }

        var number = group.Text[0] - '0';
        var due = _number < 0 ? number is 0 or 1 : number == (_number == 9 ? 1 : _number + 1);
        if (pressureHpa > _lastHpa)
        {
            return due ? throw group.Origin.Refuse("pressure-not-falling", $"{pressureHpa:0.#} hPa comes after {_lastHpa:0.#} hPa. Check this group.", pressureHpa) : false;
        }

        if (!due && _number >= 0)
        {
            Ascent.Unreadable(group, "the numbering of the levels jumps here; a level before it seems to be missing.");
        }

        _number = number;
        return true;
    }

    private void Level(TempGroup group, double pressureHpa)
    {
        if (Ahead(1) is not { } value || (!value.IsWhole && At + 2 == Part.Groups.Count && !Part.Ended))
        {
            Cut(Ahead(1) ?? group);
            return;
        }

        _lastHpa = pressureHpa;
        At += 2;
        if (!value.IsWhole)
        {
            Ascent.Unreadable(value, "this is no group of five figures; its level is left out.");
            return;
        }

        var level = new ReadLevel(group.Origin) { PressureHpa = pressureHpa, Rank = (_winds ? TempRank.Wind : TempRank.Significant) + (Part.IsPilot ? 1 : 0) };
        Add(_winds ? WithWind(level, value) : WithTemperature(level, value));
    }
}
