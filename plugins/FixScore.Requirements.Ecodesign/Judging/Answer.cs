using System.Globalization;

namespace FixScore.Requirements.Judging;

/// <summary>The answer to one question, and what in the record decides it.</summary>
/// <param name="Status">The answer.</param>
/// <param name="Why">What decides it.</param>
sealed record Answer(FindingStatus Status, Reason Why)
{
    static readonly FindingStatus[] WorstFirst = [FindingStatus.NotMet, FindingStatus.Unknown, FindingStatus.Met, FindingStatus.NotApplicable];
    static readonly FindingStatus[] BestFirst = [FindingStatus.Met, FindingStatus.Unknown, FindingStatus.NotMet, FindingStatus.NotApplicable];

    public bool IsMet => Status == FindingStatus.Met;

    public static Answer Of(bool? holds, Reason why) =>
        new(holds switch { true => FindingStatus.Met, false => FindingStatus.NotMet, _ => FindingStatus.Unknown }, why);

    public static Answer Unknown(Reason why) => new(FindingStatus.Unknown, why);

    public static Answer NotApplicable(Reason why) => new(FindingStatus.NotApplicable, why);

    /// <summary>All are asked for: the first that is not met decides, else the first that is open. At least one.</summary>
    public static Answer All(params IEnumerable<Answer> answers) => answers.MinBy(answer => Array.IndexOf(WorstFirst, answer.Status))!;

    /// <summary>One is enough: the first that is met decides, else the first that is open. At least one.</summary>
    public static Answer Any(params IEnumerable<Answer> answers) => answers.MinBy(answer => Array.IndexOf(BestFirst, answer.Status))!;

    /// <summary>All are asked for; the reason tells all that decide. At least one.</summary>
    public static Answer Each(params IEnumerable<Answer> answers)
    {
        Answer[] all = [.. answers];
        var worst = All(all);
        return worst with { Why = Together(worst.Why.Code, [.. all.Where(answer => answer.Status == worst.Status).Select(answer => answer.Why)]) };
    }

    /// <summary>Several reasons as one, each text once.</summary>
    public static Reason Together(string code, params Reason[] reasons)
    {
        Reason[] distinct = [.. reasons.DistinctBy(reason => reason.Text)];
        if (distinct is [var only]) return only with { Code = code };
        (string, Value)[] values = [.. distinct.Select((reason, index) => (string.Create(CultureInfo.InvariantCulture, $"why{index + 1}"), (Value)reason.Text))];
        return Reason.Of(code, string.Join(' ', values.Select(value => $"{{{value.Item1}}}")), reasons.SelectMany(reason => reason.Pointers).Distinct(), values);
    }

    /// <summary>The same, with another reason when it is met.</summary>
    public Answer WhenMet(Reason why) => IsMet ? this with { Why = why } : this;
}
