using System.Collections.Immutable;

namespace FixScore.Reporting;

/// <summary>Trials that cannot all be right, in a sentence.</summary>
public static class ContradictionText
{
    /// <summary>What to do about contradictions of a context.</summary>
    public const string Advice = "Nothing is proven here until that is settled: repeat these trials, with a control (nothing installed) of each host.";

    /// <summary>Said where more contradictions may exist than are listed.</summary>
    public const string MayBeMore = "There may be more trials that cannot be right.";

    /// <summary>The sentence. Thread safe.</summary>
    /// <param name="trials">A smallest set of trials that cannot all be right; one at least.</param>
    public static string Of(ImmutableArray<string> trials) => trials.Length == 1
        ? $"Trial {trials[0]} cannot be right: it flags a function, and no part that may be the cause is foreign in it."
        : $"Trials {string.Join(", ", trials)} cannot all be right: no part that one of them blames is left by the others.";
}
