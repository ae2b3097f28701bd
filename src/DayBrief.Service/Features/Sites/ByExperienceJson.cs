using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>A figure for each experience group as the outside contract names them. Null where the site sets none.</summary>
public sealed record ByExperienceJson(double? BeforeSolo = null, double? LocalSolo = null, double? CrossCountry = null)
{
    internal static ByExperienceJson? Of<T>(ByExperience<T?> values, Func<T, double> number)
        where T : struct
    {
        double? Number(T? value) => value is { } known ? number(known) : null;
        return NullIfEmpty(new(Number(values.BeforeSolo), Number(values.LocalSolo), Number(values.CrossCountry)));
    }

    internal static ByExperienceJson? NullIfEmpty(ByExperienceJson json) => json == new ByExperienceJson() ? null : json;

    internal ByExperience<T?> To<T>(FieldErrors errors, string field, Func<double, T> make)
        where T : struct
    {
        T? Checked(string group, double? value) => errors.Optional($"{field}.{group}", value) is { } known ? make(known) : null;
        return new(Checked("beforeSolo", BeforeSolo), Checked("localSolo", LocalSolo), Checked("crossCountry", CrossCountry));
    }
}
