using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>Infers what the trials of one context prove.</summary>
/// <remarks>Exact without listing sets of tied parts: struck out of every flag, cleared parts leave what must hold.</remarks>
sealed class ContextInference
{
    static readonly SearchLimit ForContradictions = new(Sets: 100, Work: 20_000);
    static readonly SearchLimit ForProof = new(Sets: 1, Work: 2_000);

    readonly ImmutableArray<SwapTrial> trials;
    readonly Statements said;
    readonly ImmutableArray<(Flag Flag, ImmutableArray<string> Left)> flags;
    readonly ImmutableHashSet<string> cleared;
    readonly ImmutableHashSet<string> paired;

    ContextInference(ImmutableArray<SwapTrial> trials, Statements said)
    {
        this.trials = trials;
        this.said = said;
        cleared = [.. said.Clearances.SelectMany(clearance => clearance.Parts)];
        flags = [.. said.Flags.Select(flag => (flag, Without(flag.Suspects, cleared)))];
        paired = [.. flags.Where(flag => flag.Left.Length == 1).Select(flag => flag.Left[0])];
    }

    public static ContextVerdicts Infer(SwapContext context, ImmutableArray<SwapTrial> trials, ForeignParts parts)
    {
        var inference = new ContextInference(trials, StatementReader.Read(trials, parts));
        var contradictions = inference.Contradictions();
        return new(
            context,
            trials,
            [.. contradictions.Sets.Select(inference.Ids)],
            contradictions.Complete,
            [.. parts.Judged.Select(part => inference.VerdictOn(part, parts.CandidatesOfGroup(part)))]);
    }

    PartVerdict VerdictOn(Part part, ImmutableArray<string> group)
    {
        var alone = Conclude([part.Id]);
        return new(part, alone, group is [var only] && only == part.Id ? alone : Conclude(group));
    }

    Proofs Contradictions() => ProofSearch.Smallest(
        said.Clearances,
        [.. flags.Where(flag => flag.Left.IsEmpty).Select(flag => new ProofGoal(flag.Flag.Trial, flag.Flag.Suspects))],
        ForContradictions);

    Conclusion Conclude(ImmutableArray<string> unit)
    {
        if (!unit.Any(said.Foreign.Contains)) return new(Verdict.Untested, default, SwapResult.Refused, [], []);
        if (flags.Any(flag => flag.Left.IsEmpty)) return new(Verdict.Suspect, default, SwapResult.Refused, [], []);
        var proofs = flags.Where(flag => flag.Left.All(unit.Contains)).Select(flag => flag.Flag).ToImmutableArray();
        if (!proofs.IsEmpty) return Paired(unit, proofs);
        return unit.All(cleared.Contains) ? Cleared(unit) : Suspect(unit);
    }

    Conclusion Paired(ImmutableArray<string> unit, ImmutableArray<Flag> proofs)
    {
        var worst = CheckReading.WorstOf(proofs.Select(flag => flag.Seen.Check));
        var goals = proofs
            .Where(flag => flag.Seen.Check.Worst() == worst.Stated[^1])
            .Select(flag => new ProofGoal(flag.Trial, Without(flag.Suspects, [.. unit])));
        return new(Verdict.Paired, worst, worst.Stated[^1], Because([.. goals]), [.. proofs.Select(flag => flag.Seen)]);
    }

    Conclusion Cleared(ImmutableArray<string> unit) =>
        new(Verdict.Cleared, default, SwapResult.Works, Because([new(null, unit)]), []);

    Conclusion Suspect(ImmutableArray<string> unit)
    {
        var blaming = flags.Where(flag => flag.Left.Any(unit.Contains)).ToImmutableArray();
        var settled = blaming.Any(flag => !flag.Flag.Unsettled.Any(unit.Contains));
        var atWorst = settled ? blaming.Max(flag => flag.Flag.Seen.Check.Worst()) : SwapResult.Refused;
        var open = blaming.Where(flag => !flag.Left.Any(paired.Contains)).Select(flag => flag.Flag).ToImmutableArray();
        return new(
            Verdict.Suspect, default, atWorst, Ids(open.Select(flag => flag.Trial).Distinct()), [.. open.Select(flag => flag.Seen)]);
    }

    ImmutableArray<string> Because(ImmutableArray<ProofGoal> goals) => Ids(ProofSearch.Smallest(said.Clearances, goals, ForProof).Sets[0]);

    ImmutableArray<string> Ids(IEnumerable<int> numbers) => [.. numbers.Select(number => trials[number].Id)];

    ImmutableArray<string> Ids(ImmutableSortedSet<int> numbers) => Ids(numbers.AsEnumerable());

    static ImmutableArray<string> Without(ImmutableArray<string> parts, ImmutableHashSet<string> struck) =>
        [.. parts.Where(part => !struck.Contains(part))];
}
