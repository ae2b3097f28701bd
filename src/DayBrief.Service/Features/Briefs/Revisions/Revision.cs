using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>One signed revision of a brief: never changed, never deleted while its brief is kept.</summary>
/// <remarks>The hash covers all of it, the ascent's bytes by their own hash, and by its hash the revision before; so a change
/// of any of them shows, also to a later program that writes records with more in them.</remarks>
internal sealed record Revision
{
    public required string BriefId { get; init; }

    /// <summary>1 for the first.</summary>
    public required int Number { get; init; }

    public required string SiteId { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>Name of the instructor who signed.</summary>
    public required string SignedBy { get; init; }

    public required string SignedById { get; init; }

    public required DateTimeOffset SignedAt { get; init; }

    /// <summary>Why it was amended; null for the first.</summary>
    public string? Reason { get; init; }

    /// <summary>The version of the draft that was signed.</summary>
    public required int DraftVersion { get; init; }

    public required string ProgramVersion { get; init; }

    public required BriefInputs Inputs { get; init; }

    /// <summary>SHA-256 of the ascent's bytes.</summary>
    public required string SoundingHash { get; init; }

    /// <summary>The brief as it was computed, as the API gives it, word for word.</summary>
    public required string Content { get; init; }

    /// <summary>The hash of the revision before, of this brief or of the one whose place this one took.</summary>
    public string? PreviousHash { get; init; }

    /// <summary>The other brief of this field and day whose place this one took; null where there was none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Replaces { get; init; }

    /// <summary>What was signed, word for word: this record as JSON. Its hash stands for the whole.</summary>
    [JsonIgnore]
    public string Text { get; private init; } = "";

    /// <summary>SHA-256 of <see cref="Text"/>.</summary>
    [JsonIgnore]
    public string Hash { get; private init; } = "";

    /// <summary>It still says what was signed.</summary>
    [JsonIgnore]
    public bool IsIntact => Hash == HashOf(Encoding.UTF8.GetBytes(Text));

    /// <summary>The program that signs now.</summary>
    [JsonIgnore]
    public static string ThisProgram { get; } =
        typeof(Revision).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "unknown";

    [JsonIgnore]
    public string Id => IdOf(BriefId, Number);

    public static string IdOf(string briefId, int number) => $"{briefId}-r{number}";

    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>With its text and hash, as it is kept.</summary>
    public Revision Sealed()
    {
        var text = JsonSerializer.Serialize(this, Json.Line);
        return this with { Text = text, Hash = HashOf(Encoding.UTF8.GetBytes(text)) };
    }

    /// <summary>A kept revision.</summary>
    public static Revision Open(string text, string hash) =>
        JsonSerializer.Deserialize<Revision>(text, Json.Line)! with { Text = text, Hash = hash };
}

/// <summary>A brief that was taken back: by whom, when and why.</summary>
internal sealed record Withdrawal(string By, DateTimeOffset At, string Reason);
