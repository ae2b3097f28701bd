using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Components;

namespace DayBrief.Service.Features.People;

/// <summary>A page or part of one in the reader's language, with what is wrong with its fields.</summary>
public abstract class PageInLanguage : ComponentBase
{
    [CascadingParameter]
    public HttpContext? Context { get; set; }

    /// <summary>What was refused: a list of <see cref="ProblemError"/>.</summary>
    [Parameter]
    public object? Refused { get; set; }

    /// <summary>The language of the page that it stands in; else the reader's, as the request tells.</summary>
    [Parameter]
    public Language? Page { get; set; }

    protected Language In => Page is { } page ? page : Context is null ? Language.English : Language.Of(Context.Request);

    /// <summary>What is wrong with a field, in the reader's language.</summary>
    protected string? ErrorOf(string field) =>
        (Refused as IReadOnlyList<ProblemError>)?.FirstOrDefault(error => error.Field == field) is { } found ? In.Say(found.Words) : null;
}
