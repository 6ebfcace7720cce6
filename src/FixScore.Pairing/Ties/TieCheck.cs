using System.Globalization;
using FixScore.Records;

namespace FixScore.Pairing.Ties;

/// <summary>Tells where swap trials may show a tie between two parts that is read as one to the main board.</summary>
/// <remarks>
/// A warning when ties to the main board alone explain nothing; a hint for every part that is paired only as long as no
/// two parts are tied to each other. The record stays valid and no verdict changes.
/// </remarks>
public sealed class TieCheck : IRecordCheck
{
    /// <summary>The code of its warnings: <see cref="TieFindingKind.OnlyPartsExplain"/>.</summary>
    public const string OnlyPartsExplain = "swaps.ties-only-between-parts";

    /// <summary>The code of its hints: <see cref="TieFindingKind.MayBeBetweenParts"/>.</summary>
    public const string MayBeBetweenParts = "swaps.tie-may-be-between-parts";

    /// <inheritdoc/>
    public string Id => "swap-trials-ties";

    /// <inheritdoc/>
    public IEnumerable<Problem> Check(TeardownCase source) =>
        from context in source.Derive<PairTies>().Contexts
        from finding in context.Findings
        select Told(source, context, finding, [.. context.Trials.Where(trial => finding.Trials.Contains(trial.Id))]);

    static Problem Told(TeardownCase source, ContextTies context, TieFinding finding, SwapTrial[] trials)
    {
        var only = finding.Kind == TieFindingKind.OnlyPartsExplain;
        return new(
            only ? Severity.Warning : Severity.Hint,
            source.At(trials[0]),
            Reason.Of(
                only ? OnlyPartsExplain : MayBeBetweenParts,
                only
                    ? "No part tied to the main board explains what {trials} showed; a tie between two parts may: {ties} ({context})."
                    : "What {trials} showed of {part} is read as a tie to the main board; a tie between two parts may be behind it: {ties} ({context}).",
                trials.Select(source.At),
                ("trials", string.Join(", ", finding.Trials)),
                ("part", finding.Part ?? "none"),
                ("ties", Some(finding)),
                ("context", context.Context.ToString())),
            "Put in both parts of such a pair from one unit, or the main board alone: neither breaks a tie between the two.");
    }

    static string Some(TieFinding finding) => finding.Between.Length <= 3
        ? string.Join(", ", finding.Between)
        : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", finding.Between.Take(3))} and {finding.Between.Length - 3} more");
}
