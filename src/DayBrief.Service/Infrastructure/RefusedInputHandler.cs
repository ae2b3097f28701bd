using DayBrief.Soundings;
using Microsoft.AspNetCore.Diagnostics;

namespace DayBrief.Service.Infrastructure;

/// <summary>Turns refused input into problem details, whichever endpoint met it.</summary>
internal sealed class RefusedInputHandler(IProblemDetailsService problems) : IExceptionHandler
{
    /// <summary>ENOSPC of POSIX, as .NET passes it on.</summary>
    private const int EndOfDisk = 28;

    public async ValueTask<bool> TryHandleAsync(HttpContext context, Exception exception, CancellationToken stopping)
    {
        var problem = exception switch
        {
            InvalidSoundingException refused => Problem.Of(refused),
            InvalidInputException refused => Problem.Of(refused),
            BadHttpRequestException bad => Problem.Of(bad),
            InvalidDataException => Problem.Of(InvalidInputException.Field("body", "The form cannot be read; it is damaged, or larger than what is taken here.")),
            NoRoomException or IOException { HResult: EndOfDisk } => Problem.NoRoom(),
            // What the form reader says of a body that ends before its last part does.
            IOException cut when cut.Message.StartsWith("Unexpected end of Stream", StringComparison.Ordinal) =>
                Problem.Of(InvalidInputException.Field("body", "The form cannot be read; it is damaged, or larger than what is taken here.")),
            WithheldException changed => Problem.NotAsSigned(changed.Error),
            TimeoutException late => Problem.Busy(late.Message),
            _ => null,
        };
        if (problem is null)
            return false;
        problem.Instance ??= context.Request.Path;
        context.Response.StatusCode = problem.Status!.Value;
        // It asks what the client accepts; a client that accepts nothing we have is told in JSON.
        if (!await problems.TryWriteAsync(new() { HttpContext = context, ProblemDetails = problem, Exception = exception }))
            await context.Response.WriteAsJsonAsync(problem, Json.Line, "application/problem+json", stopping);
        return true;
    }
}
