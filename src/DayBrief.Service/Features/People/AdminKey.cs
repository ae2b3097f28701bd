using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.People;

/// <summary>An administrator's key given by the environment, there from the first start.</summary>
internal sealed class AdminKey
{
    public const string Variable = "DAYBRIEF_ADMIN_KEY";

    private const int Least = 32;

    private readonly string? _hash;

    /// <exception cref="UnusableSettingException">The key is too short to be one.</exception>
    public AdminKey(string? key)
    {
        if (string.IsNullOrEmpty(key))
            return;
        if (key.Trim().Length < Least)
            throw new UnusableSettingException($"{Variable} must have {Least} characters or more; it has {key.Trim().Length}. Make one with: openssl rand -base64 33");
        _hash = Secret.Hash(key.Trim());
    }

    public bool IsSet => _hash is not null;

    public bool Is(string key) => Secret.Matches(key, _hash);
}
