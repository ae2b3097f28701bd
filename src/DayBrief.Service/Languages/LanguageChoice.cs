using Microsoft.AspNetCore.Http.Extensions;

namespace DayBrief.Service.Languages;

/// <summary>A language chosen by a link: remembered for a year.</summary>
internal static class LanguageChoice
{
    private const string Parameter = "language";

    public static void UseLanguageChoice(this WebApplication app) =>
        app.Use((context, next) =>
        {
            if (Asked(context.Request) is { } language)
                context.Response.Cookies.Append(Language.Cookie, language.Code, Remembered());
            return next();
        });

    /// <summary>The language that the link asks for; null when it asks for none that we have.</summary>
    public static Language? Asked(HttpRequest request) => Language.Named(request.Query[Parameter].FirstOrDefault());

    /// <summary>The same address in this language; everything else that it asks for stays.</summary>
    public static string Link(this Language language, HttpRequest request)
    {
        var query = new QueryBuilder(request.Query.Where(asked => asked.Key != Parameter)) { { Parameter, language.Code } };
        return $"{request.PathBase}{request.Path}{query}";
    }

    private static CookieOptions Remembered() =>
        new() { MaxAge = TimeSpan.FromDays(365), HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true };
}
