using DayBrief.Soundings;
using Microsoft.AspNetCore.Diagnostics;

namespace DayBrief.Service.Infrastructure;

/// <summary>Turns refused input into problem details, whichever endpoint met it.</summary>
internal sealed class RefusedInputHandler : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext context, Exception exception, CancellationToken stopping)
    {
        var problem = exception switch
        {
            InvalidSoundingException refused => Problem.Of(refused),
            InvalidInputException refused => Problem.Of(refused),
            BadHttpRequestException bad => Problem.Of(bad),
            InvalidDataException tooLarge => Problem.Of(InvalidInputException.Field("body", $"The form cannot be read: {tooLarge.Message}")),
            _ => null,
        };
        if (problem is null)
            return false;
        problem.Instance ??= context.Request.Path;
        context.Response.StatusCode = problem.Status!.Value;
        await context.Response.WriteAsJsonAsync(problem, Json.Line, "application/problem+json", stopping);
        return true;
    }
}
