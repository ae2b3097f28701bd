using System.Net;

namespace DayBrief.Service.Features.People;

/// <summary>A new install is a trial until somebody can sign in: whoever sits at the machine may prepare briefs, nobody else.</summary>
internal sealed class Trial(PersonStore people, ApiKeyStore keys, AdminKey adminKey, AuditLog audit)
{
    /// <summary>Any of these says that the request came through a proxy, so that its near end says nothing about its far one.</summary>
    private static readonly string[] Forwarding =
        ["Forwarded", "Via", "X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "X-Real-IP", "X-Original-For", "X-Original-Host", "X-Original-Proto"];

    /// <summary>No person, no key, and no key of the environment; and never was: a store that is lost is no new install.</summary>
    public bool IsOn => !adminKey.IsSet && !people.Any() && !keys.Any() && !audit.KnewSomebody;

    public bool Allows(HttpContext context) => IsOn && IsAtTheMachine(context) && !OtherOrigin.Sent(context.Request);

    private static bool IsAtTheMachine(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } address
        && IPAddress.IsLoopback(address)
        && !Forwarding.Any(context.Request.Headers.ContainsKey)
        && NamesTheMachine(context.Request.Host.Host);

    /// <summary>A page elsewhere whose name is made to lead here (DNS rebinding) still sends its own name.</summary>
    private static bool NamesTheMachine(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));
}
