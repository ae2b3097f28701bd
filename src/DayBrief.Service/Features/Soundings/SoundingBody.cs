using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Soundings;

/// <summary>The bytes of an ascent out of a request: its body, or the file or text of a form.</summary>
internal sealed record SoundingBody(ReadOnlyMemory<byte> Content, string? Name)
{
    public const int MaxBytes = 10 * 1024 * 1024;

    public static InvalidInputException TooLarge(string field) =>
        InvalidInputException.Field(field, $"The input is larger than {MaxBytes / 1024 / 1024} MB. One ascent is far smaller; cut it out of the file.");

    public static async Task<SoundingBody> ReadAsync(HttpRequest request, CancellationToken stopping)
    {
        if (request.HasFormContentType)
        {
            var form = await request.ReadFormAsync(stopping);
            return form.Files.Count > 0
                ? new(await ReadAsync(form.Files[0].OpenReadStream(), stopping), form.Files[0].FileName)
                : new(System.Text.Encoding.UTF8.GetBytes(form["text"].ToString()), "pasted text");
        }

        return new(await ReadAsync(request.Body, stopping), request.Query["name"].FirstOrDefault());
    }

    private static async Task<ReadOnlyMemory<byte>> ReadAsync(Stream stream, CancellationToken stopping)
    {
        using var buffer = new MemoryStream();
        var chunk = new byte[81920];
        for (int read; (read = await stream.ReadAsync(chunk, stopping)) > 0;)
        {
            buffer.Write(chunk, 0, read);
            if (buffer.Length > MaxBytes)
                throw TooLarge("body");
        }

        return buffer.ToArray();
    }
}
