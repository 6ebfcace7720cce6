using FixScore.Records;

namespace FixScore.Requirements.Judging;

/// <summary>Observations as values of reasons.</summary>
static class Shown
{
    public static string Of(Part part) => part.Name ?? part.Id;

    public static string Of<T>(OneOf<T> word) where T : struct, Enum =>
        word.IsUnknown ? "unknown" : string.Join(" or ", word.Stated.Select(Word.Of));

    /// <summary>A number with its unit; open ends as in <see cref="Quantity.ToString"/>.</summary>
    public static Value Of(Quantity? number, string unit) => number switch
    {
        null or { Min: null, Max: null } => $"unknown {unit}",
        { Min: { } min, Max: { } max } => Value.Of(new Interval(min, max), unit),
        { } open => $"{open} {unit}",
    };

    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
