using System.Text.Json;
using System.Text.Json.Serialization;
using DayBrief.Soundings;
using DayBrief.Texts;
using Microsoft.AspNetCore.Mvc;

namespace DayBrief.Service.Infrastructure;

/// <summary>One reason inside problem details: what is wrong and where.</summary>
internal sealed record ProblemError(
    [property: JsonIgnore] Words Words,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Code = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? Line = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Group = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Field = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? LevelHpa = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] long? ByteOffset = null)
{
    /// <summary>The words in English, as programs get them.</summary>
    [JsonPropertyOrder(-1)]
    public string Detail => Words.ToString();

    public static ProblemError Of(Refusal refusal) => new(
        refusal.Words,
        refusal.Code,
        refusal.Line,
        refusal.Group,
        refusal.Field,
        refusal.Level?.Hectopascals,
        refusal.ByteOffset);
}

/// <summary>RFC 9457 problem details with the list of errors that every refused input gets.</summary>
internal static class Problem
{
    public static ProblemDetails Of(InvalidSoundingException refused, string? input = null) =>
        Of(StatusCodes.Status422UnprocessableEntity, "The sounding cannot be used.", refused.Message, input, [.. refused.Refusals.Select(ProblemError.Of)]);

    public static ProblemDetails Of(InvalidInputException refused) =>
        Of(StatusCodes.Status400BadRequest, "The input cannot be used.", refused.Message, null, [.. refused.Errors]);

    /// <summary>A request whose shape is wrong, such as JSON with a number where a date belongs: names the place in the JSON.</summary>
    public static ProblemDetails Of(BadHttpRequestException bad) => Of(
        bad.StatusCode,
        "The request cannot be used.",
        bad.Message,
        null,
        [bad.InnerException is JsonException json
            ? new ProblemError($"The JSON is not as expected at {json.Path ?? "its start"} (line {(json.LineNumber ?? 0) + 1}).", "json", (int)(json.LineNumber ?? 0) + 1, Field: json.Path)
            : new ProblemError(bad.Message, "request", Field: "body")]);

    /// <summary>Somebody else was first.</summary>
    public static ProblemDetails Conflict(string what, string field) =>
        Of(StatusCodes.Status409Conflict, "Somebody else was first.", what, null, [new(what, "conflict", Field: field)]);

    public static ProblemDetails NotFound(string what) =>
        Of(StatusCodes.Status404NotFound, "Not found.", what, null, []);

    /// <summary>Refused for what others have done meanwhile.</summary>
    public static ProblemDetails Conflict(string detail, int status = StatusCodes.Status409Conflict) =>
        Of(status, "Not as it was seen.", detail, null, [new ProblemError(detail)]);

    /// <summary>What is kept as signed is something else.</summary>
    public static ProblemDetails NotAsSigned(ProblemError error) =>
        Of(StatusCodes.Status409Conflict, "Not as it was signed.", error.Detail, null, [error]);

    /// <summary>The disk is full.</summary>
    public static ProblemDetails NoRoom() => Of(
        StatusCodes.Status507InsufficientStorage, "No room.", NoRoomException.Words.ToString(), null, [new(NoRoomException.Words, NoRoomException.Code)]);

    /// <summary>Not now.</summary>
    public static ProblemDetails Busy(string detail) =>
        Of(StatusCodes.Status503ServiceUnavailable, "Not now.", detail, null, [new ProblemError(detail, "busy")]);

    /// <summary>Refused for who asks, not for what is asked; names the header that would say who.</summary>
    public static ProblemDetails Refused(int status, string title, string detail, string header, string path) =>
        Of(status, title, detail, path, [new ProblemError(detail, status == StatusCodes.Status401Unauthorized ? "not-signed-in" : "not-allowed", Field: header)]);

    private static ProblemDetails Of(int status, string title, string detail, string? input, ProblemError[] errors)
    {
        var problem = new ProblemDetails
        {
            Status = status,
            Title = title,
            Detail = detail,
            Type = $"urn:daybrief:problem:{status}",
            Instance = input,
        };
        if (errors.Length > 0)
            problem.Extensions["errors"] = errors;
        return problem;
    }
}

/// <summary>An input other than a sounding that cannot be used; names the fields.</summary>
internal sealed class InvalidInputException(params IReadOnlyList<ProblemError> errors)
    : Exception(errors[0] is { Field: { } field } ? $"{field}: {errors[0].Detail}" : errors[0].Detail)
{
    public IReadOnlyList<ProblemError> Errors => errors;

    public static InvalidInputException Field(string field, Words detail) => new(new ProblemError(detail, Field: field));
}
