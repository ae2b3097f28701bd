namespace DayBrief.Service.Features.People;

/// <summary>The sites there are, by id and name; <c>WebService</c> connects it with the store of the sites, which lies above.</summary>
internal delegate IReadOnlyList<(string Id, string Name)> KnownSites();
