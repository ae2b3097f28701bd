using DayBrief.Texts;

namespace DayBrief.Service.Infrastructure;

/// <summary>Collects what is wrong with the fields of one input, so that all of it is told at once.</summary>
/// <remarks>What is wrong does not name the field: it stands beside it on a page, and programs get the field apart.</remarks>
internal sealed class FieldErrors(string? prefix = null)
{
    private readonly List<ProblemError> _errors = [];

    /// <summary>All that was found wrong until now.</summary>
    public IReadOnlyList<ProblemError> All => _errors;

    public void Add(string field, Words detail) =>
        _errors.Add(new ProblemError(detail, Field: prefix is null ? field : $"{prefix}.{field}"));

    /// <summary>A number within its range; 0 and an error otherwise.</summary>
    public double Number(string field, double? value, double min, double max)
    {
        if (value is { } number && number >= min && number <= max)
            return number;
        if (value is null)
            Add(field, $"Needs a number from {min} to {max}.");
        else
            Add(field, $"Needs a number from {min} to {max}; it is {value}.");
        return min <= 0 && max >= 0 ? 0 : min;
    }

    /// <summary>A number within the range that the table has for it; its least and an error otherwise.</summary>
    public double Number(string field, double? value) =>
        InputRange.Of(field) is var range ? Number(field, value, range.Least, range.Most) : default;

    /// <summary>A number within the range that the table has for it, or nothing.</summary>
    public double? Optional(string field, double? value) => value is null ? null : Number(field, value);

    /// <summary>A number within its range or nothing.</summary>
    public double? Optional(string field, double? value, double min, double max) =>
        value is null ? null : Number(field, value, min, max);

    /// <summary>One of a set of names, or the default where none is given.</summary>
    public T OneOf<T>(string field, string? name, T otherwise)
        where T : struct, Enum => OneOf<T>(field, name) ?? otherwise;

    /// <summary>One of a set of names, or nothing.</summary>
    public T? OneOf<T>(string field, string? name)
        where T : struct, Enum
    {
        if (string.IsNullOrWhiteSpace(name))
            return null;
        var choice = Choice.Parse<T>(name);
        if (choice is null)
            Add(field, $"Needs one of {string.Join(", ", Choice.Names<T>())}; it is \"{name}\".");
        return choice;
    }

    /// <summary>A text of at most so many characters.</summary>
    public void Length(string field, string? text, int most)
    {
        if (text?.Length > most)
            Add(field, $"Can have at most {most} characters; it has {text.Length}.");
    }

    /// <exception cref="InvalidInputException">There are errors.</exception>
    public void ThrowIfAny()
    {
        if (_errors.Count > 0)
            throw new InvalidInputException([.. _errors]);
    }
}
