namespace FixScore.Requirements.Judging;

/// <summary>One requirement, judged only when it applies.</summary>
/// <param name="Rule">Names it, a slug.</param>
/// <param name="Article">Where it stands in the law.</param>
/// <param name="Judge">The answer.</param>
sealed record Requirement(string Rule, string Article, Func<Answer> Judge)
{
    /// <summary>The finding; not applicable where a reason against the whole law is given.</summary>
    public Finding Finding(Reason? outside)
    {
        var answer = outside is null ? Judge() : Answer.NotApplicable(outside);
        return new(Rule, Article, answer.Status, answer.Why);
    }
}
