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
    readonly ILookup<string, Blame> blaming;
    readonly ImmutableHashSet<string> cleared;

    public ContextInference(ImmutableArray<SwapTrial> trials, ICandidates candidates)
    {
        this.trials = trials;
        said = StatementReader.Read(trials, candidates);
        cleared = [.. said.Clearances.SelectMany(clearance => clearance.Parts)];
        var left = said.Flags.Select(flag => Without(flag.Suspects, cleared)).ToImmutableArray();
        var paired = left.Where(suspects => suspects.Length == 1).Select(suspects => suspects[0]).ToHashSet(StringComparer.Ordinal);
        Flags = [.. said.Flags.Select((flag, i) => new Blame(i, flag, left[i], left[i].Any(paired.Contains)))];
        blaming = Flags.SelectMany(flag => flag.Left, (flag, suspect) => (suspect, flag)).ToLookup(pair => pair.suspect, pair => pair.flag);
    }

    /// <summary>The flags, in the order of the record.</summary>
    public ImmutableArray<Blame> Flags { get; }

    public static ContextVerdicts Infer(SwapContext context, ImmutableArray<SwapTrial> trials, ForeignParts parts)
    {
        var inference = new ContextInference(trials, parts);
        var contradictions = inference.Contradictions();
        return new(
            context,
            trials,
            inference.Named(contradictions),
            contradictions.Complete,
            [.. parts.Judged.Select(part => inference.VerdictOn(part, parts.CandidatesOfGroup(part)))]);
    }

    PartVerdict VerdictOn(Part part, ImmutableArray<string> group)
    {
        var alone = Conclude([part.Id]);
        return new(part, alone, group is [var only] && only == part.Id ? alone : Conclude(group));
    }

    /// <summary>The smallest sets of trials that cannot all be right.</summary>
    public Proofs Contradictions() => ProofSearch.Smallest(
        said.Clearances,
        [.. Flags.Where(flag => flag.Left.IsEmpty).Select(flag => new ProofGoal(flag.Flag.Trial, flag.Flag.Suspects))],
        ForContradictions);

    /// <summary>What is concluded about candidates taken together: whether one of them at least is tied, whether none is.</summary>
    public Conclusion Conclude(ImmutableArray<string> unit)
    {
        if (!unit.Any(said.Foreign.Contains)) return new(Verdict.Untested, default, SwapResult.Refused, [], []);
        if (Flags.Any(flag => flag.Left.IsEmpty)) return new(Verdict.Suspect, default, SwapResult.Refused, [], []);
        var proofs = Blaming(unit).Where(flag => flag.Left.All(unit.Contains)).Select(flag => flag.Flag).ToImmutableArray();
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
        var blamed = Blaming(unit);
        var settled = blamed.Any(flag => !flag.Flag.Unsettled.Any(unit.Contains));
        var atWorst = settled ? blamed.Max(flag => flag.Flag.Seen.Check.Worst()) : SwapResult.Refused;
        var open = blamed.Where(flag => !flag.Explained).Select(flag => flag.Flag).ToImmutableArray();
        return new(
            Verdict.Suspect, default, atWorst, Ids(open.Select(flag => flag.Trial).Distinct()), [.. open.Select(flag => flag.Seen)]);
    }

    ImmutableArray<string> Because(ImmutableArray<ProofGoal> goals) => Ids(ProofSearch.Smallest(said.Clearances, goals, ForProof).Sets[0]);

    ImmutableArray<Blame> Blaming(ImmutableArray<string> unit) =>
        [.. unit.SelectMany(each => blaming[each]).DistinctBy(flag => flag.Number).OrderBy(flag => flag.Number)];

    ImmutableArray<string> Ids(IEnumerable<int> numbers) => [.. numbers.Select(number => trials[number].Id)];

    /// <summary>Sets of trials by their ids.</summary>
    public ImmutableArray<ImmutableArray<string>> Named(Proofs proofs) => [.. proofs.Sets.Select(set => Ids(set))];

    static ImmutableArray<string> Without(ImmutableArray<string> parts, ImmutableHashSet<string> struck) =>
        [.. parts.Where(part => !struck.Contains(part))];
}
