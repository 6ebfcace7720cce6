using System.Globalization;
using FixScore.Records;

namespace FixScore.Pairing.Ties;

/// <summary>Warns where ties to the main board alone explain nothing, but a tie between two parts does.</summary>
/// <remarks>
/// The record stays valid and no verdict changes. That a part proven to be tied may be tied to another part as well is no
/// slip of the record: see <see cref="ContextTies.Findings"/>.
/// </remarks>
public sealed class TieCheck : IRecordCheck
{
    const int MostNamed = 3;

    /// <summary>The code of its warnings: <see cref="TieFindingKind.OnlyPartsExplain"/>.</summary>
    public const string OnlyPartsExplain = "swaps.ties-only-between-parts";

    /// <inheritdoc/>
    public string Id => "swap-trials-ties";

    /// <inheritdoc/>
    // Ties between parts are looked for only where ties to the board explain nothing: most records need not pay for it.
    public IEnumerable<Problem> Check(TeardownCase source) => source.Derive<PairingVerdicts>().IsConsistent ? [] :
        from context in source.Derive<PairTies>().Contexts
        from finding in context.Findings
        where finding.Kind == TieFindingKind.OnlyPartsExplain
        select Warning(source, context, finding, [.. context.Trials.Where(trial => finding.Trials.Contains(trial.Id))]);

    static Problem Warning(TeardownCase source, ContextTies context, TieFinding finding, SwapTrial[] trials) => new(
        Severity.Warning,
        source.At(trials[0]),
        Reason.Of(
            OnlyPartsExplain,
            "No part tied to the main board explains what {trials} showed; a tie between two parts may: {ties} ({context}).",
            trials.Select(source.At),
            ("trials", string.Join(", ", finding.Trials)),
            ("ties", Some(finding)),
            ("context", context.Context.ToString())),
        "Put in both parts of such a pair from one unit, or the main board alone: neither breaks a tie between the two.");

    static string Some(TieFinding finding) => finding.Between.Length <= MostNamed
        ? string.Join(", ", finding.Between)
        : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", finding.Between.Take(MostNamed))} and {finding.Between.Length - MostNamed} more");
}
