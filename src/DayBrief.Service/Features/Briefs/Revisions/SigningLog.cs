using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Notes in the audit log what was signed and withdrawn, on whichever way.</summary>
internal static class SigningLog
{
    public static void Signed(this AuditLog audit, HttpContext context, Revision revision) => audit.Write(
        Who.Of(context),
        revision.Number == 1 ? Language.Text("Signed a brief") : Language.Text("Amended a brief"),
        revision.BriefId,
        $"revision {revision.Number}, {revision.Hash}");

    public static void Withdrew(this AuditLog audit, HttpContext context, string briefId, string? reason) =>
        audit.Write(Who.Of(context), Language.Text("Withdrew a brief"), briefId, reason);
}
