using System.Net.Mail;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>To whom a site sends its signed briefs. Nothing set, nothing sent; never part of a brief.</summary>
public sealed record SiteSendingJson
{
    private const int MostAddresses = 200;
    private const int MostWebhooks = 10;

    /// <summary>Each gets a mail of its own when a brief is published, amended or withdrawn.</summary>
    public IReadOnlyList<string>? MailTo { get; init; }

    public IReadOnlyList<WebhookJson>? Webhooks { get; init; }

    /// <summary>Whether there is a feed (Atom) of what was signed.</summary>
    public bool? Feed { get; init; }

    /// <summary>Whether the key times are given as a calendar.</summary>
    public bool? Calendar { get; init; }

    internal bool IsEmpty => MailTo is null or [] && Webhooks is null or [] && Feed != true && Calendar != true;

    /// <summary>Tells everything that cannot be used.</summary>
    internal void Check(FieldErrors errors)
    {
        if (MailTo?.Count > MostAddresses)
            errors.Add("sending.mailTo", $"At most {MostAddresses} addresses; there are {MailTo.Count}. A mailing list takes one.");
        for (var i = 0; i < Math.Min(MailTo?.Count ?? 0, MostAddresses); i++)
        {
            if (!IsMailbox(MailTo![i]))
                errors.Add($"sending.mailTo[{i}]", $"\"{MailTo[i]}\" is not a mail address such as pilots@example.org.");
        }

        if (Webhooks?.Count > MostWebhooks)
            errors.Add("sending.webhooks", $"At most {MostWebhooks} addresses; there are {Webhooks.Count}.");
        for (var i = 0; i < Math.Min(Webhooks?.Count ?? 0, MostWebhooks); i++)
            (Webhooks![i] ?? new(null, null)).Check($"sending.webhooks[{i}]", errors);
    }

    /// <summary>One plain address without a name, spaces or anything that could end a line of a header.</summary>
    internal static bool IsMailbox(string? address) =>
        address is { Length: > 2 and <= 254 }
        && address.All(letter => letter is > ' ' and <= '~' and not ('<' or '>' or '(' or ')' or ',' or ';' or ':' or '"' or '\\' or '[' or ']'))
        && address.Count(letter => letter == '@') == 1
        && MailAddress.TryCreate(address, out var parsed)
        && parsed.Address == address;
}

/// <summary>An address that is told by POST of JSON, and the secret that the POST is signed with.</summary>
/// <param name="Address">http or https.</param>
/// <param name="Secret">"whsec_" and 24 to 64 bytes in Base64.</param>
public sealed record WebhookJson(string? Address, string? Secret)
{
    internal const string Prefix = "whsec_";
    private const int Longest = 500;

    /// <summary>The key of the signature; null when the secret cannot be used.</summary>
    internal byte[]? Key()
    {
        var bytes = new byte[64];
        return Secret?.StartsWith(Prefix, StringComparison.Ordinal) == true
            && Convert.TryFromBase64String(Secret[Prefix.Length..], bytes, out var length)
            && length >= 24
                ? bytes[..length]
                : null;
    }

    internal Uri? Target() =>
        Address is { Length: <= Longest }
        && Uri.TryCreate(Address, UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttps || address.Scheme == Uri.UriSchemeHttp)
        && address.UserInfo.Length == 0
            ? address
            : null;

    internal void Check(string field, FieldErrors errors)
    {
        if (Target() is null)
            errors.Add($"{field}.address", $"\"{Address}\" is not an address that begins with http:// or https://, without user name or password and of at most {Longest} characters.");
        if (Key() is null)
            errors.Add($"{field}.secret", $"The secret must be \"{Prefix}\" and 24 to 64 bytes in Base64.");
    }

    /// <summary>Never into a log.</summary>
    public override string ToString() => Address ?? "";
}
