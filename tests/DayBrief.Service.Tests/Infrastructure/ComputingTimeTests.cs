using DayBrief.Days;
using DayBrief.Service.Features.Sites;
using DayBrief.Soundings;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Hosting;

namespace DayBrief.Service.Infrastructure;

/// <summary>A computing ends when nobody waits for it any more.</summary>
public sealed class ComputingTimeTests
{
    private const string Site = """{"latitude":52,"longitude":-1,"elevationM":100,"timeZone":"Europe/London"}""";

    [Fact]
    public void A_day_is_not_computed_on_when_it_is_stopped() => Assert.Throws<OperationCanceledException>(() => ConvectiveDay.Compute(
        SoundingReader.Read(System.Text.Encoding.UTF8.GetBytes(Demo.Text("broad-post-frontal.txt")), "demo"),
        SiteJson.Parse(Site).ToSite(),
        new(2026, 5, 21),
        stopping: new(canceled: true)));

    [Fact]
    public void It_ends_with_its_request()
    {
        using var gone = new CancellationTokenSource();
        using var life = new Life();
        var computing = new ComputingTime(new HttpContextAccessor { HttpContext = new DefaultHttpContext { RequestAborted = gone.Token } }, life);
        Assert.Equal(1, computing.Within(_ => 1));
        Assert.Throws<OperationCanceledException>(() => computing.Within(stopping =>
        {
            gone.Cancel();
            stopping.ThrowIfCancellationRequested();
            return 1;
        }));
    }

    [Fact]
    public void It_ends_with_the_service()
    {
        using var life = new Life();
        Assert.Throws<OperationCanceledException>(() => new ComputingTime(new HttpContextAccessor(), life).Within(stopping =>
        {
            life.StopApplication();
            stopping.ThrowIfCancellationRequested();
            return 1;
        }));
    }

    private sealed class Life : IHostApplicationLifetime, IDisposable
    {
        private readonly CancellationTokenSource _stopping = new();

        public CancellationToken ApplicationStarted => default;

        public CancellationToken ApplicationStopping => _stopping.Token;

        public CancellationToken ApplicationStopped => default;

        public void StopApplication() => _stopping.Cancel();

        public void Dispose() => _stopping.Dispose();
    }
}
