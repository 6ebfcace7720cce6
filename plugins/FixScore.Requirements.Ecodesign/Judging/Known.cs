namespace FixScore.Requirements.Judging;

/// <summary>Questions to what was observed: yes, no, or <c>null</c> when the observation leaves it open.</summary>
static class Known
{
    /// <summary>Whether the number reaches a limit.</summary>
    public static bool? AtLeast(this Quantity? number, decimal limit) => number switch
    {
        { Min: { } min } when min >= limit => true,
        { Max: { } max } when max < limit => false,
        _ => null,
    };

    /// <summary>Whether the number does not exceed a limit.</summary>
    public static bool? AtMost(this Quantity? number, decimal limit) => number switch
    {
        { Max: { } max } when max <= limit => true,
        { Min: { } min } when min > limit => false,
        _ => null,
    };

    /// <summary>Whether every word it can be fits, or none does.</summary>
    public static bool? Fits<T>(this OneOf<T> word, Func<T, bool> fits) where T : struct, Enum
    {
        var possible = word.Possible();
        return possible.All(fits) ? true : possible.Any(fits) ? null : false;
    }

    /// <summary>Whether all hold; all of none do.</summary>
    public static bool? All(params IEnumerable<bool?> answers)
    {
        bool? all = true;
        foreach (var answer in answers)
        {
            if (answer == false) return false;
            all = answer is null ? null : all;
        }
        return all;
    }

    /// <summary>Whether at least one holds; of none, none does.</summary>
    public static bool? Any(params IEnumerable<bool?> answers) => !All(answers.Select(answer => !answer));
}
