namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>Registers the guard of all connections to addresses that people typed.</summary>
internal static class OutgoingConnections
{
    public static void AddOutgoing(this IServiceCollection services, IConfiguration configuration) =>
        services.AddSingleton(new AddressGuard(AllowedHosts.Of(configuration)));
}
