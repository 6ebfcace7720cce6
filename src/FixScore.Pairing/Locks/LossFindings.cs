using FixScore.Records;

namespace FixScore.Pairing.Locks;

/// <summary>What other trials say against a recorded loss, as findings.</summary>
sealed class LossFindings(TeardownCase source)
{
    public TrialFinding Contradiction(LockTrial trial, FunctionLoss loss, LockObservation seen) => seen.Works
        ? Of("loss-not-seen", "{trial} says that {function} is lost (comes back: {recovers}), yet {other} shows it at work when {state}.", trial, loss, seen)
        : Of("loss-outlasts-recovery", "{trial} says that {function} is lost (comes back: {recovers}), yet {other} shows it lost when {state}.", trial, loss, seen);

    public TrialFinding Disagreement(LockTrial trial, FunctionLoss loss, LockTrial relock, FunctionLoss other) => new(
        Reason.Of("recoveries-disagree", "{trial} says that {function} is lost (comes back: {recovers}), {other} says it too (comes back: {otherRecovers}).",
            [source.At(loss), source.At(other)],
            ("trial", trial.Id), ("function", loss.Function), ("recovers", Shown(loss.Recovers)), ("other", relock.Id), ("otherRecovers", Shown(other.Recovers))),
        [trial.Id, relock.Id]);

    public TrialFinding Doubt(LockTrial trial, FunctionLoss loss, LockTrial relock) => new(
        Reason.Of("loss-not-listed-again", "{trial} says that {function} is lost (comes back: {recovers}), yet {other} does not list it as lost: check whether it works.",
            [source.At(loss), source.At(relock)],
            ("trial", trial.Id), ("function", loss.Function), ("recovers", Shown(loss.Recovers)), ("other", relock.Id)),
        [trial.Id, relock.Id]);

    TrialFinding Of(string code, string template, LockTrial trial, FunctionLoss loss, LockObservation seen) => new(
        Reason.Of(code, template, [source.At(loss), source.At(seen.By)],
            ("trial", trial.Id), ("function", loss.Function), ("recovers", Shown(loss.Recovers)), ("other", seen.By.Id), ("state", StateOf(seen))),
        [.. new[] { trial.Id, seen.By.Id }.Distinct(StringComparer.Ordinal)]);

    static string StateOf(LockObservation seen) =>
        seen.Procedure == SwapProcedure.Reset ? $"{Word.Of(seen.State)}, after a reset" : Word.Of(seen.State);

    static string Shown(OneOf<Recovery> recovers) =>
        recovers.IsUnknown ? "unknown" : string.Join(" or ", recovers.Stated.Select(recovery => Word.Of(recovery).Replace('-', ' ')));
}
