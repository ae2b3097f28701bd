using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;
using LiteDB;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Notes in the audit log what was signed and withdrawn, in the transaction that keeps it.</summary>
internal static class SigningLog
{
    public static void Signed(this AuditLog audit, Func<string, ILiteCollection<BsonDocument>> collection, Signer signer, Revision revision) => audit.Put(
        collection,
        (signer.Id, signer.Name, signer.ByKey),
        revision.Number == 1 ? Language.Text("Signed a brief") : Language.Text("Amended a brief"),
        revision.BriefId,
        $"revision {revision.Number}, {revision.Hash}");

    public static void Withdrew(this AuditLog audit, Func<string, ILiteCollection<BsonDocument>> collection, Signer signer, string briefId, string reason) =>
        audit.Put(collection, (signer.Id, signer.Name, signer.ByKey), Language.Text("Withdrew a brief"), briefId, reason);
}
