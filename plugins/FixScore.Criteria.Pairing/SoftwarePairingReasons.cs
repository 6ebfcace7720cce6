using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Criteria.Pairing;

/// <summary>Reasons of the criterion and observations that would narrow its score.</summary>
static class SoftwarePairingReasons
{
    public static Reason Inert(TeardownCase source, Part part) =>
        Reason.Of("inert", "{part} cannot carry a code", [source.At(part)], ("part", NameOf(part)));

    public static Reason Board(TeardownCase source, Part part) => Reason.Of(
        "main-board", "Other parts are tied to the main board; {part} is replaced with it and gets no verdict", [source.At(part)], ("part", NameOf(part)));

    public static Reason Of(TeardownCase source, Part part, Observed seen, Interval points) =>
        (seen switch
        {
            { Trials.IsConsistent: false } => Contradiction(source, part, seen),
            { Found.Verdict: Verdict.Paired } => Paired(source, part, seen),
            { Found.Verdict: Verdict.Cleared } => Cleared(source, part, seen),
            _ => Suspect(source, part, seen),
        }) with { Points = points };

    public static Reason Restored(TeardownCase source, Part part, Observed seen) => Reason.Of(
        "restored",
        "After {procedure} {part} works like the original, shown by {trials} ({context})",
        seen.Because.Select(source.At),
        ("part", NameOf(part)), ("procedure", Word.Of(seen.Context.Procedure ?? SwapProcedure.None)),
        ("trials", TrialsOf(seen)), ("context", seen.Context.ToString()));

    public static Reason Demanded(TeardownCase source, Part part, Interval points) => Reason.Of(
        "serialised",
        "When {part} is replaced the maker demands notification: {notify}, authorisation: {authorise}",
        [source.At(part)],
        ("part", NameOf(part)), ("notify", WordOf(part.Serialised?.Notify ?? default)),
        ("authorise", WordOf(part.Serialised?.Authorise ?? default))) with { Points = points };

    public static Missing Demand(TeardownCase source, Part part) =>
        new(source.At(part), "serialised: whether the maker demands notification or authorisation when the part is replaced");

    public static Missing AnyTrial(TeardownCase source, Part part) =>
        new(source.At(part), $"swaps: a trial with {NameOf(part)} alone from another unit, every function checked");

    /// <summary>The trial that would settle what a context leaves open; <c>null</c> when it leaves nothing open.</summary>
    public static Missing? Settling(TeardownCase source, Part part, Observed seen) => seen switch
    {
        { Trials.IsConsistent: false } =>
            new(source.At(part), $"swaps: trials {string.Join(", ", seen.Trials.Contradictions[0])} again, and a control of each host ({seen.Context})"),
        { Found.Verdict: Verdict.Suspect } =>
            new(source.At(part), $"swaps: a trial with {NameOf(part)} alone from another unit{FunctionsOf(seen)} ({seen.Context})"),
        _ => null,
    };

    static Reason Paired(TeardownCase source, Part part, Observed seen)
    {
        var flag = seen.Found.Flags.First(each => each.Check.Result.Stated.Contains(seen.Found.AtWorst));
        return Reason.Of(
            "paired",
            "{part} is tied to the main board: {function} is {result} in trial {trial}, proven by {trials} ({context})",
            [.. seen.Because.Select(source.At), source.At(flag.Check)],
            ("part", NameOf(part)), ("function", flag.Check.Function), ("result", WordOf(flag.Check.Result)),
            ("trial", flag.Trial.Id), ("trials", TrialsOf(seen)), ("context", seen.Context.ToString()));
    }

    static Reason Cleared(TeardownCase source, Part part, Observed seen) => Reason.Of(
        "cleared", "{part} from another unit works like the original, shown by {trials} ({context})",
        seen.Because.Select(source.At),
        ("part", NameOf(part)), ("trials", TrialsOf(seen)), ("context", seen.Context.ToString()));

    static Reason Suspect(TeardownCase source, Part part, Observed seen) => Reason.Of(
        "suspect", "{part} was swapped, and the trials neither tie nor clear it; at worst it is {result} ({context})",
        [.. seen.Because.Select(source.At), .. seen.Found.Flags.Select(flag => source.At(flag.Check))],
        ("part", NameOf(part)), ("result", Word.Of(seen.Found.AtWorst)), ("context", seen.Context.ToString()));

    static Reason Contradiction(TeardownCase source, Part part, Observed seen) => Reason.Of(
        "contradictory-trials", "Nothing is known of {part}, for {trials} cannot be right together ({context})",
        seen.Trials.Trials.Where(trial => seen.Trials.Contradictions[0].Contains(trial.Id)).Select(source.At),
        ("part", NameOf(part)), ("trials", string.Join(", ", seen.Trials.Contradictions[0])), ("context", seen.Context.ToString()));

    static string NameOf(Part part) => part.Name ?? part.Id;

    static string TrialsOf(Observed seen) => string.Join(", ", seen.Found.Because);

    static string FunctionsOf(Observed seen) => seen.Found.Flags.IsEmpty
        ? ", every function checked"
        : $", checking {string.Join(", ", seen.Found.Flags.Select(flag => flag.Check.Function).Distinct())}";

    static string WordOf<T>(OneOf<T> word) where T : struct, Enum =>
        word.IsUnknown ? "unknown" : string.Join(" or ", word.Stated.Select(Word.Of));
}
