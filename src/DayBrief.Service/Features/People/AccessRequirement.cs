using Microsoft.AspNetCore.Authorization;

namespace DayBrief.Service.Features.People;

/// <summary>What a policy asks for: of a person a role, of a program the scope of its key.</summary>
/// <param name="Role">The least role.</param>
/// <param name="Scope">The least scope.</param>
/// <param name="InTrial">Met also by whoever sits at the machine of a trial.</param>
internal sealed record AccessRequirement(Role Role, KeyScope Scope, bool InTrial) : IAuthorizationRequirement;

/// <summary>Decides on <see cref="AccessRequirement"/>, everywhere the same.</summary>
internal sealed class AccessHandler(Trial trial) : AuthorizationHandler<AccessRequirement>
{
    protected override Task HandleRequirementAsync(AuthorizationHandlerContext context, AccessRequirement requirement)
    {
        if (Meets(context, requirement))
            context.Succeed(requirement);
        return Task.CompletedTask;
    }

    private bool Meets(AuthorizationHandlerContext context, AccessRequirement requirement)
    {
        var http = context.Resource as HttpContext;
        if (Who.ScopeOf(context.User) is { } scope)
            return scope >= requirement.Scope;
        // The browser adds the cookie by itself, whichever page made it send the request.
        if (http is not null && OtherOrigin.Sent(http.Request))
            return false;
        return Who.Of(context.User) is { } person
            ? person.Role >= requirement.Role
            : requirement.InTrial && http is not null && trial.Allows(http);
    }
}
