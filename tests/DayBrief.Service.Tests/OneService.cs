namespace DayBrief.Service;

/// <summary>One service for all tests that only need one: job and font state is process-wide, so they run in turn.</summary>
[CollectionDefinition(Name)]
public sealed class OneService : ICollectionFixture<ServiceHost>
{
    public const string Name = "service";
}
