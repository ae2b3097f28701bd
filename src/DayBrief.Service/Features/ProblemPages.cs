using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features;

/// <summary>Tells a person with a browser on a page what the framework tells programs in problem details: an address that is
/// not there, a form that is too large, something that broke.</summary>
internal sealed class ProblemPages : IProblemDetailsWriter
{
    /// <summary>Browsers name pages among what they accept; programs, and scripts of pages, do not.</summary>
    public bool CanWrite(ProblemDetailsContext context) =>
        !context.HttpContext.Request.Path.StartsWithSegments("/api")
        && context.HttpContext.Request.GetTypedHeaders().Accept.Any(accepted => accepted.MediaType.Equals("text/html", StringComparison.OrdinalIgnoreCase));

    public async ValueTask WriteAsync(ProblemDetailsContext context)
    {
        var problem = context.ProblemDetails;
        var status = problem.Status ?? context.HttpContext.Response.StatusCode;
        if (status == StatusCodes.Status404NotFound)
        {
            await NotFoundPage.Result("page [not found]").ExecuteAsync(context.HttpContext);
            return;
        }

        var page = new RazorComponentResult<ProblemPage>(new Dictionary<string, object?>
        {
            [nameof(ProblemPage.Status)] = status,
            [nameof(ProblemPage.Refused)] = problem.Extensions.TryGetValue("errors", out var errors) ? errors : null,
        })
        { StatusCode = status };
        await page.ExecuteAsync(context.HttpContext);
    }
}
