using System.CommandLine;
using System.Reflection;
using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.House;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Routing;

namespace DayBrief.Service.Languages;

/// <summary>docs/words.md says of every verb, screen and code whose word it is; what there is comes from the program itself.</summary>
[Collection(OneService.Name)]
public sealed class WordsListTests
{
    private static readonly string List = File.ReadAllText(Path.Combine(Repository.Root, "docs", "words.md"));

    [Fact]
    public void Every_verb_is_listed()
    {
        var verbs = typeof(Infrastructure.Json).Assembly.GetTypes()
            .Where(type => type.Namespace == "DayBrief.Service.Commands" && type.Name.EndsWith("Command", StringComparison.Ordinal))
            .Select(type => ((Command)type.GetMethod("Create", BindingFlags.Public | BindingFlags.Static)!.Invoke(null, null)!).Name)
            .ToArray();
        Assert.True(verbs.Length >= 6);
        Assert.All(verbs, verb => Assert.Contains($"| `{verb}` |", List, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_address_that_can_be_opened_is_listed()
    {
        await using var host = new ServiceHost();
        var patterns = host.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(route => route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET") == true)
            .Select(route => "/" + route.RoutePattern.RawText!.Trim('/'))
            .Where(pattern => !pattern.StartsWith("/hangfire", StringComparison.Ordinal))
            .Distinct()
            .ToArray();
        Assert.True(patterns.Length > 30);
        Assert.Equal("", string.Join(' ', patterns.Where(pattern => !List.Contains($"`{pattern}`", StringComparison.Ordinal))));
    }

    [Fact]
    public void Every_code_is_listed()
    {
        string[] codes =
        [
            .. Choice.Names<HazardKind>(),
            .. Choice.Names<ThermalKind>(),
            .. Choice.Names<GliderClass>(),
            .. Choice.Names<DeviationKind>(),
            .. Enum.GetValues<CentringWay>().Select(CentringWays.NameOf),
        ];
        Assert.DoesNotContain(codes, code => !List.Contains($"`{code}`", StringComparison.Ordinal));
    }
}
