namespace DayBrief.Days;

/// <summary>What a computed day must tell its reader besides its figures.</summary>
internal static class DayCautions
{
    public static void Add(DayFrame frame, DayTrack track, Headline headline, WindInLayer? wind, List<Caution> cautions)
    {
        if (frame.Sun.IsPolarNight)
            cautions.Add(new("polar-night", Phrase.Of($"The sun does not rise on this date.")));
        if (frame.Sun.IsPolarDay)
            cautions.Add(new("polar-day", Phrase.Of($"The sun does not set on this date: the day runs from midnight to midnight.")));
        if (headline.FirstUsable < 0)
            cautions.Add(new("no-usable-thermals", TypeAssessment.NoThermals(frame, headline)));
        foreach (var pause in KeyTimes.Of(headline, frame).Pauses)
            cautions.Add(new("thermals-pause", Phrase.Of($"Usable thermals pause from {pause.From:HH:mm} to {pause.To:HH:mm}.")));
        if (track.TopOfAscentReached)
            cautions.Add(new("top-of-ascent", Phrase.Of($"The thermals reach the top of the ascent: how much deeper they grow is not known.")));
        if (frame.Winds is null)
            cautions.Add(new("no-winds", Phrase.Of($"The ascent has no winds: streets, drift and lean are not known; 4 m/s is taken for the ground's friction.")));
        if (wind is { TooMuch: true })
            cautions.Add(new("much-wind", Phrase.Of($"Wind or shear is so strong that thermals may be torn and hard to use.")));
        if (frame.Prescribed is not null)
            cautions.Add(new("prescribed-flux", Phrase.Of($"The heating was given, not computed from the sun.")));
    }
}
