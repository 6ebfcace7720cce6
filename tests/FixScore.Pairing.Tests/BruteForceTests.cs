using FixScore.Records;

namespace FixScore.Pairing.Tests;

/// <summary>What is inferred equals what listing every set of parts shows.</summary>
public sealed class BruteForceTests
{
    const int Records = 20_000;

    [Fact]
    public void Verdicts_and_worst_results_equal_those_of_all_sets_of_parts() => OnAll(Records, mostParts: 12, check: (truth, context) =>
    {
        var explanations = truth.Explanations().ToArray();
        foreach (var verdict in context.Parts)
        {
            var group = GroupIn(truth, context, verdict);
            AssertConclusion(truth, explanations, verdict.OfPart, truth.Parts.Contains(verdict.Part.Id) ? truth.MaskOf([verdict.Part.Id]) : 0);
            AssertConclusion(truth, explanations, verdict.OfGroup, group);
        }
    });

    [Fact]
    public void Contradictions_equal_the_smallest_sets_of_trials_without_an_explanation() => OnAll(Records, (truth, context) =>
    {
        Assert.Equal(truth.Explanations().Any(), context.IsConsistent);
        if (context.IsConsistent) return;
        Assert.True(context.AllContradictionsListed);
        Assert.Equal(truth.SmallestContradictions(), context.Contradictions.Select(set => set.Joined()).Order(StringComparer.Ordinal));
    });

    [Fact]
    public void The_trials_named_prove_the_verdict_and_no_fewer_do() => OnAll(1_500, mostParts: 6, mostTrials: 7, check: (truth, context) =>
    {
        if (!context.IsConsistent) return;
        foreach (var verdict in context.Parts.Where(verdict => verdict.Verdict is Verdict.Paired or Verdict.Cleared))
        {
            var least = Enumerable.Range(0, 1 << context.Trials.Length)
                .Where(set => Proves(truth, set, verdict)).Min(set => int.PopCount(set));
            Assert.True(Proves(truth, truth.TrialMask(verdict.Because), verdict));
            Assert.Equal(least, verdict.Because.Length);
        }
    });

    [Fact]
    public void The_random_trials_show_every_verdict_and_both_agreement_and_contradiction()
    {
        var seen = new SortedDictionary<string, int>(StringComparer.Ordinal);
        OnAll(2_000, (_, context) =>
        {
            Count($"consistent {context.IsConsistent}");
            foreach (var verdict in context.Parts.Where(_ => context.IsConsistent)) Count(verdict.Verdict.ToString());
        });
        Assert.Equal(["Cleared", "Paired", "Suspect", "Untested", "consistent False", "consistent True"], seen.Keys);
        Assert.All(seen.Values, count => Assert.True(count > 100));

        void Count(string what) => seen[what] = seen.GetValueOrDefault(what) + 1;
    }

    static bool Proves(BruteForce truth, int trials, PartVerdict verdict)
    {
        var part = truth.MaskOf([verdict.Part.Id]);
        return verdict.Verdict == Verdict.Cleared
            ? truth.Explanations(trials).All(tied => (tied & part) == 0)
            : truth.Proofs(part, trials).Any(check => check.Result.Stated.Max() == verdict.Worst.Stated.Max());
    }

    static void AssertConclusion(BruteForce truth, int[] explanations, Conclusion conclusion, int parts)
    {
        Assert.Equal(Expected(truth, explanations, parts), conclusion.Verdict);
        if (conclusion.Verdict == Verdict.Paired)
            Assert.Equal(Maxima([.. truth.Proofs(parts).Select(check => check.Result.Stated.ToArray())]), conclusion.Worst.Stated.Order());
        else
            Assert.True(conclusion.Worst.IsUnknown);
    }

    static Verdict Expected(BruteForce truth, int[] explanations, int parts)
    {
        if ((truth.ForeignAnywhere & parts) == 0) return Verdict.Untested;
        if (explanations.Length == 0) return Verdict.Suspect;
        if (explanations.All(tied => (tied & parts) != 0)) return Verdict.Paired;
        return explanations.All(tied => (tied & parts) == 0) ? Verdict.Cleared : Verdict.Suspect;
    }

    // The worst of one choice from each list, for all choices.
    static IEnumerable<SwapResult> Maxima(SwapResult[][] lists) => lists
        .Aggregate<SwapResult[], IEnumerable<SwapResult>>([SwapResult.Works], (worst, list) => worst.SelectMany(_ => list, (a, b) => a > b ? a : b).Distinct())
        .Order();

    static int GroupIn(BruteForce truth, ContextVerdicts context, PartVerdict verdict) =>
        truth.MaskOf(context.Parts.Select(other => other.Part.Id).Where(other => truth.Parts.Contains(other) && truth.AreTogether(verdict.Part.Id, other)));

    static void OnAll(int records, Action<BruteForce, ContextVerdicts> check, int mostParts = 10, int mostTrials = 8)
    {
        for (var seed = 0; seed < Runs.Of(records); seed++)
        {
            var record = RandomTrials.Of(seed, mostParts, mostTrials);
            foreach (var context in Bench.Infer(record).Contexts) check(new BruteForce(record, context.Trials), context);
        }
    }
}
