using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Locks;

/// <summary>A lock trial with what is doubtful about it.</summary>
sealed record CheckedLock(LockCost Cost, ImmutableArray<TrialFinding> Contradictions, ImmutableArray<TrialFinding> Doubts);

/// <summary>Holds the losses of lock trials against what other trials on the same unit show.</summary>
sealed class LossCheck(TeardownCase source, ImmutableArray<LockObservation> observations)
{
    readonly LossFindings findings = new(source);

    public CheckedLock Check(LockTrial trial)
    {
        if (!trial.Outcome.MayBe(LockOutcome.Done)) return new(new(trial, [.. trial.Losses.Select(Unchecked)]), [], []);
        var losses = trial.Losses.Select(loss => (Loss: loss, Against: Against(trial, loss).ToImmutableArray())).ToImmutableArray();
        return new(
            new(trial, [.. losses.Select(each => Seen(trial, each.Loss, !each.Against.IsEmpty))]),
            [.. losses.SelectMany(each => each.Against)],
            [.. losses.Where(each => each.Against.IsEmpty).SelectMany(each => Doubts(trial, each.Loss))]);
    }

    IEnumerable<TrialFinding> Against(LockTrial trial, FunctionLoss loss) =>
        About(trial, loss).Where(seen => Contradicts(loss, seen)).Select(seen => findings.Contradiction(trial, loss, seen))
            .Concat(Other(trial, loss).Select(other => findings.Disagreement(trial, loss, other.Trial, other.Loss)));

    static bool Contradicts(FunctionLoss loss, LockObservation seen) => seen.Works
        ? Expectation.IsLost(loss.Recovers, seen.State, seen.Procedure)
        : Expectation.IsBack(loss.Recovers, seen.State, seen.Procedure);

    // Where closing the lock brings it back, that it stays lost is told already.
    IEnumerable<(LockTrial Trial, FunctionLoss Loss)> Other(LockTrial trial, FunctionLoss loss) =>
        trial.To != LockState.Unlocked || loss.Recovers.IsUnknown || loss.Recovers.Is(Recovery.OnRelock) ? [] :
        from relock in Relocks(trial)
        from other in relock.Losses
        where other.Function == loss.Function && !other.Recovers.IsUnknown && !loss.Recovers.Stated.Any(other.Recovers.MayBe)
        select (relock, other);

    IEnumerable<TrialFinding> Doubts(LockTrial trial, FunctionLoss loss) =>
        trial.To == LockState.Unlocked && Expectation.IsLost(loss.Recovers, LockState.Relocked, null)
            ? Silent(trial, loss).Select(relock => findings.Doubt(trial, loss, relock))
            : [];

    LostFunction Seen(LockTrial trial, FunctionLoss loss, bool isContradicted)
    {
        if (trial.To != LockState.Unlocked) return new(loss, AfterRelock.NotSeen, [], isContradicted);
        var after = About(trial, loss).Where(seen => seen.State == LockState.Relocked && seen.Procedure != SwapProcedure.Reset).ToArray();
        if (after.Length == 0)
        {
            ImmutableArray<string> silent = [.. Silent(trial, loss).Select(relock => relock.Id)];
            return new(loss, silent.IsEmpty ? AfterRelock.NotSeen : AfterRelock.NotListed, silent, isContradicted);
        }
        var state = after.All(seen => seen.Works) ? AfterRelock.Works : after.Any(seen => seen.Works) ? AfterRelock.Disputed : AfterRelock.Lost;
        return new(loss, state, [.. after.Select(seen => seen.By.Id)], isContradicted);
    }

    static LostFunction Unchecked(FunctionLoss loss) => new(loss, AfterRelock.NotSeen, [], false);

    // What was lost by closing the lock again says nothing of how it was while open.
    IEnumerable<LockObservation> About(LockTrial trial, FunctionLoss loss) =>
        observations.Where(seen => seen.Unit == trial.Unit && seen.Function == loss.Function && seen.State >= trial.To);

    IEnumerable<LockTrial> Silent(LockTrial trial, FunctionLoss loss) =>
        Relocks(trial).Where(relock => relock.Losses.All(other => other.Function != loss.Function));

    IEnumerable<LockTrial> Relocks(LockTrial trial) =>
        source.Record.Locks.Where(other => other.Unit == trial.Unit && LockObservations.IsRelock(other));
}
