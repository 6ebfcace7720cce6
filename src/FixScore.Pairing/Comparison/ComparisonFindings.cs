using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>Comparisons as findings.</summary>
sealed class ComparisonFindings(TeardownCase source, Swap swap, string function, ImmutableArray<string> modelCodes)
{
    const string Subject = "{parts} from {donor}, {function}: ";
    const string Parts = "{parts}, {function}: ";
    const int MostNamed = 4;

    public TrialFinding Of(ComparedBy by, ComparedSide first, ComparedSide second, Fares fares)
    {
        var (code, template) = by switch
        {
            ComparedBy.LockState => LockStates(first, second, fares),
            ComparedBy.Procedure => Procedures(second, fares),
            _ => Sources(fares),
        };
        ImmutableArray<SwapTrial> trials = [.. first.Trials, .. second.Trials];
        return new(
            Reason.Of(code, template + Comparability, trials.Select(source.At), [.. Facts(by, first, second)]),
            [.. trials.Select(trial => trial.Id)]);
    }

    static (string, string) LockStates(ComparedSide first, ComparedSide second, Fares fares) => (fares, Works(first), Works(second)) switch
    {
        (Fares.Alike, _, _) => ("lock-states-alike", Subject + "{firstResult} both when {first} and when {second}."),
        (Fares.Worse, true, _) => ("flagged-in-one-lock-state", Subject + "{secondResult} only when {second}, works when {first}."),
        (Fares.Better, _, true) => ("flagged-in-one-lock-state", Subject + "{firstResult} only when {first}, works when {second}."),
        (Fares.Open, _, _) => ("lock-states-open", Subject + "{firstResult} when {first}, {secondResult} when {second}; whether the lock matters is open."),
        _ => ("lock-states-differ", Subject + "{firstResult} when {first}, {secondResult} when {second}."),
    };

    static (string, string) Procedures(ComparedSide second, Fares fares) => fares switch
    {
        Fares.Alike => ("procedure-changes-nothing", Subject + "{firstResult} with {second} as without."),
        Fares.Worse => ("procedure-worsens", Subject + "{firstResult} without, worse with {second}: {secondResult}."),
        Fares.Open => ("procedure-open", Subject + "{firstResult} without, {secondResult} with {second}; what it does is open."),
        _ when Works(second) => ("procedure-restores", Subject + "{firstResult} without, works with {second}."),
        _ => ("procedure-improves", Subject + "{firstResult} without, better but not right with {second}: {secondResult}."),
    };

    static (string, string) Sources(Fares fares) => fares switch
    {
        Fares.Alike => ("source-alike", Parts + "{firstResult} from {otherDonor} as from {donor}."),
        Fares.Worse => ("source-worse", Parts + "{firstResult} from {donor}, worse from {otherDonor}: {secondResult}."),
        Fares.Open => ("source-open", Parts + "{firstResult} from {donor}, {secondResult} from {otherDonor}; which fares better is open."),
        _ => ("source-better", Parts + "{firstResult} from {donor}, better from {otherDonor}: {secondResult}."),
    };

    IEnumerable<(string, Value)> Facts(ComparedBy by, ComparedSide first, ComparedSide second) =>
    [
        ("parts", Shown(swap.Parts)), ("function", function),
        ("donor", Donor(by == ComparedBy.Source ? first.What : swap.Sources)), ("otherDonor", Donor(by == ComparedBy.Source ? second.What : swap.Sources)),
        ("first", first.What), ("firstResult", Shown(first.Result)), ("second", second.What), ("secondResult", Shown(second.Result)),
        ("modelCodes", string.Join(", ", modelCodes)),
    ];

    string Comparability => modelCodes.Length < 2 ? "" : " Not comparable: the units have the model codes {modelCodes}.";

    static bool Works(ComparedSide side) => side.Result.Is(SwapResult.Works);

    static string Donor(string kind) => kind switch
    {
        UnitKinds.Device => "a sister unit",
        UnitKinds.Unknown => "another unit",
        _ when kind.Contains(',', StringComparison.Ordinal) => $"several units ({kind})",
        _ => $"a {kind.Replace('-', ' ')}",
    };

    static string Shown(OneOf<SwapResult> result) => string.Join(" or ", result.Stated.Select(Word.Of));

    static string Shown(ImmutableArray<string> ids) => ids.Length <= MostNamed + 1
        ? string.Join(", ", ids)
        : FormattableString.Invariant($"{string.Join(", ", ids.Take(MostNamed))} and {ids.Length - MostNamed} more");
}
