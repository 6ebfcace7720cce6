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

    /// <summary>The same, with another reason when it is met.</summary>
    public Answer WhenMet(Reason why) => IsMet ? this with { Why = why } : this;
}
