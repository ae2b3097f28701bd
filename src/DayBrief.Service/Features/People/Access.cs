using Microsoft.AspNetCore.Authorization;

namespace DayBrief.Service.Features.People;

/// <summary>The policies that routes name: <c>.RequireAuthorization(Access.Instructor)</c>.</summary>
internal static class Access
{
    /// <summary>Anybody who has signed in, and every key.</summary>
    public const string Reader = "reader";

    /// <summary>Writes down what really happened: anybody who has signed in, and every key; in a trial also whoever sits at the machine.</summary>
    public const string Observer = "observer";

    /// <summary>Prepares briefs: instructors, administrators, every key; in a trial also whoever sits at the machine.</summary>
    public const string Instructor = "instructor";

    /// <summary>Signs, amends, withdraws: as <see cref="Instructor"/>, but of the keys only those with the scope to sign.</summary>
    public const string Signer = "signer";

    /// <summary>Administrators, and keys with the scope to administer. Nobody in a trial.</summary>
    public const string Administrator = "administrator";

    public static void AddPolicies(AuthorizationOptions authorization)
    {
        Add(Reader, new(Role.Reader, KeyScope.Prepare, InTrial: false));
        Add(Observer, new(Role.Reader, KeyScope.Prepare, InTrial: true));
        Add(Instructor, new(Role.Instructor, KeyScope.Prepare, InTrial: true));
        Add(Signer, new(Role.Instructor, KeyScope.Sign, InTrial: true));
        Add(Administrator, new(Role.Administrator, KeyScope.Administer, InTrial: false));

        void Add(string name, AccessRequirement requirement) =>
            authorization.AddPolicy(name, policy => policy.AddRequirements(requirement));
    }
}
