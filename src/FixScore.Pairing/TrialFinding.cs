using System.Collections.Immutable;

namespace FixScore.Pairing;

/// <summary>Something that trials show when they are held against each other: data first, text from it.</summary>
/// <param name="Why">A code that stays the same when texts improve, the facts by name, and where they stand in the record.</param>
/// <param name="Trials">Ids of the swap and lock trials that show it, in the order in which they are held against each other.</param>
public sealed record TrialFinding(Reason Why, ImmutableArray<string> Trials)
{
    /// <summary>The code, a slug.</summary>
    public string Code => Why.Code;

    /// <summary>The text in the invariant culture, a sentence.</summary>
    public string Text => Why.Text;
}
