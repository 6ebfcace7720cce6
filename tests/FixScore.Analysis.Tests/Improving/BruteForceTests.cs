using CsCheck;
using FixScore.Analysis.Improving;
using FixScore.Patching;

namespace FixScore.Analysis.Tests.Improving;

/// <summary>The search against trying every set there is, each scored as a whole.</summary>
public sealed class BruteForceTests
{
    const int Observations = 5;

    static readonly string[] Names = [.. Enumerable.Range(0, Observations).Select(i => $"t.o{i}")];

    static readonly string[] Aggregates = ["weighted-arithmetic", "weighted-geometric", "weighted-harmonic", "minimum"];

    static readonly Gen<Knobs> Criterion =
        from lowest in Gen.Bool
        from names in Gen.Shuffle(Names).Select(all => all[..3])
        from raises in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 100]).Array[0, 3]
        select new Knobs("t.x", names, lowest, [.. raises.Select(raise => (names[raise.Item1], (decimal)raise.Item2))]);

    static readonly Gen<(Bench Bench, decimal Target)> Cases =
        from values in Gen.Int[0, 60].Array[Observations]
        from aggregate in Gen.Int[0, Aggregates.Length - 1].Select(i => Aggregates[i])
        from criteria in Criterion.Array[1, 3]
        from gated in Gen.Bool
        from target in Gen.Int[10, 90]
        select (Bench.Of([.. values.Select(value => (decimal)value)], aggregate, [.. criteria.Select(Named)],
            gated ? """, "gates": [ { "id": "g", "when": { "node": "t-0", "below": 40 }, "cap": 50, "reason": "low" } ]""" : ""), (decimal)target);

    [Fact]
    public void The_same_smallest_sets_and_the_same_front_are_found() => Cases.Sample(each =>
    {
        var (found, all) = (each.Bench.To(each.Target), All(each.Bench).ToArray());
        var size = all.Where(set => set.Low >= each.Target).Select(set => (int?)set.Ids.Length).Min();
        Assert.True(found.IsOptimal);
        Assert.Equal(size, found.LowerBound);
        Assert.Equal(
            all.Where(set => set.Low >= each.Target && set.Ids.Length == size).Select(set => string.Join(' ', set.Ids)).Order(StringComparer.Ordinal),
            found.Sets.Select(set => string.Join(' ', Bench.Names(set))).Order(StringComparer.Ordinal));
        Assert.All(found.Front, point => Assert.Equal(all.Where(set => set.Ids.Length <= point.Changes.Length).Max(set => set.Low), point.Total.Total.Low));
    }, iter: 150);

    static Knobs Named(Knobs criterion, int index) => criterion.As($"t.{index}");

    static IEnumerable<(string[] Ids, decimal Low)> All(Bench bench)
    {
        var candidates = bench.To(100, effort: 1).Candidates;
        for (var bits = 0; bits < 1 << candidates.Length; bits++)
        {
            CandidateChange[] set = [.. candidates.Where((_, i) => (bits >> i & 1) == 1)];
            var places = set.SelectMany(each => JsonPatch.Places(each.Change.JsonPatch)).ToArray();
            if (places.Distinct().Count() < places.Length) continue;
            var record = RecordPatch.Apply(bench.Document.Record, set.Select(each => each.Change.JsonPatch)).OrThrow().Record;
            yield return ([.. set.Select(each => each.Id)], Scorer.Total(record, bench.Profile).Total.Low);
        }
    }
}
