using DayBrief.Service.Infrastructure;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>How what is kept differs from what was signed.</summary>
internal enum SignedFault
{
    /// <summary>The text no longer fits its hash.</summary>
    Text,

    /// <summary>Text and hash fit each other, and are not those that were signed.</summary>
    Signature,

    /// <summary>Nothing of that name was ever signed.</summary>
    NotSigned,

    /// <summary>It does not follow the revision that it says it follows.</summary>
    Chain,

    /// <summary>A file beside the store is another one.</summary>
    File,

    /// <summary>A file beside the store is not there.</summary>
    FileMissing,

    /// <summary>It was signed, and the store has lost it.</summary>
    Missing,

    /// <summary>A line of the audit log was taken out or changed.</summary>
    AuditMissing,

    /// <summary>A line of the audit log was put in or changed.</summary>
    AuditForeign,
}

/// <summary>What is kept is not what was signed: its figures are withheld.</summary>
internal sealed class NotAsSignedException(string id, SignedFault fault) : WithheldException($"{id} is not as it was signed ({fault}).")
{
    public const string Code = "not-as-signed";

    public override ProblemError Error => new(
        Words.Of($"What is kept here as signed is not what was signed ({id}): it has been changed since, or damaged. Its figures are withheld. Ask the instructor in charge, and let whoever runs this service check it (verify-signed)."),
        Code,
        Field: "id");
}
