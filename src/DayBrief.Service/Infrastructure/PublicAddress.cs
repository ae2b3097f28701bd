namespace DayBrief.Service.Infrastructure;

/// <summary>Where readers find the service: as the administrator says, else as the request came.</summary>
/// <remarks>What is sent without a request, such as mail, has no address unless one is set: none is made up.</remarks>
internal sealed class PublicAddress
{
    /// <summary>Setting DayBrief__PublicAddress, such as https://brief.example.org.</summary>
    public const string Setting = "DayBrief:PublicAddress";

    private readonly string? _configured;

    /// <exception cref="UnusableSettingException">It is not an address of http or https.</exception>
    public PublicAddress(IConfiguration configuration)
    {
        if (configuration[Setting] is not { Length: > 0 } text)
            return;
        var usable = Uri.TryCreate(text, UriKind.Absolute, out var address)
            && (address.Scheme == Uri.UriSchemeHttps || address.Scheme == Uri.UriSchemeHttp)
            && (address.Query + address.Fragment + address.UserInfo).Length == 0;
        _configured = usable
            ? address!.AbsoluteUri.TrimEnd('/')
            : throw new UnusableSettingException($"{Setting} must be an address such as https://brief.example.org; it is \"{text}\".");
    }

    /// <summary>The administrator has said where readers find the service.</summary>
    public bool IsSet => _configured is not null;

    /// <summary>The address of a path of ours; null when none is set.</summary>
    public string? Link(string path) => _configured is null ? null : _configured + path;

    /// <summary>The address of a path of ours, as set, else as whoever asks has found us.</summary>
    public string Link(string path, HttpRequest request) => Link(path) ?? $"{request.Scheme}://{request.Host}{request.PathBase}{path}";
}
