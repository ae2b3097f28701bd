using System.Threading.RateLimiting;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.RateLimiting;

namespace DayBrief.Service.Features.People;

/// <summary>How often one address may try passwords, links and codes, whichever name it tries them for.</summary>
internal static class Attempts
{
    public const string PerAddress = "attempts";

    /// <summary>Setting: attempts a minute of one address.</summary>
    public const string Setting = "DayBrief:SignIn:AttemptsPerMinute";

    private const int Usual = 20;

    public static void Configure(RateLimiterOptions limiter, IConfiguration configuration)
    {
        var perMinute = configuration.GetValue(Setting, Usual);
        limiter.AddPolicy(PerAddress, context => RateLimitPartition.GetFixedWindowLimiter(
            context.Connection.RemoteIpAddress?.ToString() ?? "",
            _ => new() { PermitLimit = perMinute, Window = TimeSpan.FromMinutes(1) }));
        limiter.OnRejected = (rejected, _) =>
        {
            rejected.HttpContext.Response.Headers.RetryAfter = "60";
            return new(NoticePage.Result(
                StatusCodes.Status429TooManyRequests,
                Language.Text("Too many attempts"),
                Language.Text("From here there were too many attempts within a minute. Wait a minute, then try again.")).ExecuteAsync(rejected.HttpContext));
        };
    }
}
