using System.Buffers.Binary;
using System.Net;

namespace DayBrief.Service.Features.Phone;

/// <summary>The members that make a page installable: Web Application Manifest, W3C.</summary>
[Collection(OneService.Name)]
public sealed class ShowManifestTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_manifest_names_the_program_its_start_and_icons_of_the_sizes_it_says()
    {
        using var client = host.Client();
        client.DefaultRequestHeaders.AcceptLanguage.ParseAdd("de");
        using var answer = await client.GetAsync("/manifest.webmanifest", Stopping);
        Assert.Equal("application/manifest+json", answer.Content.Headers.ContentType?.MediaType);
        var manifest = await answer.JsonAsync(HttpStatusCode.OK);
        Assert.Equal(("DayBrief", "/", "standalone", "de"), (Text("name"), Text("start_url"), Text("display"), Text("lang")));
        var purposes = new List<string>();
        foreach (var icon in manifest.GetProperty("icons").EnumerateArray().Where(icon => icon.GetProperty("type").GetString() == "image/png"))
        {
            var png = await client.GetByteArrayAsync(icon.GetProperty("src").GetString(), Stopping);
            // Width and height are the first two numbers of a PNG's header, from its byte 16 (ISO/IEC 15948).
            var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
            Assert.Equal(icon.GetProperty("sizes").GetString(), $"{width}x{height}");
            purposes.Add($"{icon.GetProperty("purpose").GetString()} {width}");
        }

        Assert.Equal(["any 192", "any 512", "maskable 512"], purposes);

        string? Text(string name) => manifest.GetProperty(name).GetString();
    }
}
