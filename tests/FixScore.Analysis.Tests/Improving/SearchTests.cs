using FixScore.Analysis.Improving;

namespace FixScore.Analysis.Tests.Improving;

public sealed class SearchTests
{
    static readonly string[] Ones = ["t.o0", "t.o1"];

    [Fact]
    public void What_is_reached_already_takes_no_change()
    {
        var found = Of("weighted-arithmetic", Raising("t.a", Ones, lowest: false, 90)).To(10);
        Assert.Empty(Assert.Single(found.Sets).Changes);
        Assert.True(found.IsOptimal);
    }

    [Fact]
    public void Two_changes_that_are_worth_something_only_together_are_found()
    {
        var found = Of("weighted-arithmetic", Raising("t.a", Ones, lowest: true, 90)).To(80);
        Assert.Equal(["t.a/raise-0", "t.a/raise-1"], Bench.Names(Assert.Single(found.Sets)));
        Assert.Equal([0, 2], found.Front.Select(set => set.Changes.Length));
        Assert.Equal((true, 2), (found.IsOptimal, found.LowerBound));
    }

    [Fact]
    public void All_smallest_sets_are_listed_best_first()
    {
        var found = Of("weighted-arithmetic", new Knobs("t.a", Ones, false, [("t.o0", 80), ("t.o1", 90)])).To(50);
        Assert.Equal([["t.a/raise-1"], ["t.a/raise-0"]], found.Sets.Select(Bench.Names));
        Assert.Equal([55m, 50m], found.Sets.Select(set => set.Total.Total.Low));
    }

    [Fact]
    public void Changes_of_one_place_are_alternatives()
    {
        var found = Of("weighted-arithmetic", new Knobs("t.a", Ones, false, [("t.o0", 60), ("t.o0", 70)])).To(46);
        Assert.Equal((false, true, (int?)null), (found.IsReached, found.IsOptimal, found.LowerBound));
        Assert.Equal([20m, 45m], found.Front.Select(set => set.Total.Total.Low));
    }

    [Fact]
    public void A_gate_that_opens_only_with_a_change_is_minded()
    {
        var bench = Bench.Of([20, 20], "weighted-arithmetic", [Raising("t.a", ["t.o0"], false, 90), Raising("t.b", ["t.o1"], false, 90)],
            """, "gates": [ { "id": "g", "when": { "node": "t-b", "below": 50 }, "cap": 40, "reason": "low" } ]""");
        Assert.Equal(["t.b/raise-0"], Bench.Names(Assert.Single(bench.To(45).Sets)));
        Assert.Equal([20m, 55m, 90m], bench.To(90).Front.Select(set => set.Total.Total.Low));
    }

    [Fact]
    public void A_criterion_that_reads_more_than_it_says_is_asked_each_time()
    {
        var found = Of("weighted-arithmetic", new Knobs("t.a", Ones, true, [("t.o0", 90), ("t.o1", 90)], reads: "documentation")).To(80);
        Assert.Equal(["t.a/raise-0", "t.a/raise-1"], Bench.Names(Assert.Single(found.Sets)));
        Assert.Equal(90m, found.Sets[0].Total.Total.Low);
    }

    // Each by itself is fine; two units of one id are not.
    [Fact]
    public void Changes_that_leave_a_wrong_record_together_are_not_combined()
    {
        var found = Bench.Of([20, 20], "weighted-arithmetic", [new Knobs("t.a", ["t.o0"], false, [("t.o0", 90)], adds: "twin"), new Knobs("t.b", ["t.o1"], false, [("t.o1", 80)], adds: "twin")]).To(80);
        Assert.Equal((false, true), (found.IsReached, found.IsOptimal));
        Assert.Equal([20m, 55m], found.Front.Select(set => set.Total.Total.Low));
    }

    [Fact]
    public void With_too_little_effort_a_set_is_put_together_step_by_step()
    {
        var names = Enumerable.Range(0, 9).Select(i => $"t.o{i}").ToArray();
        var bench = Bench.Of([.. names.Select(_ => 0m)], "weighted-arithmetic", [Raising("t.a", names, false, 90)]);
        var found = bench.To(50, effort: 250);
        Assert.False(found.IsOptimal);
        Assert.Equal(5, Assert.Single(found.Sets).Changes.Length);
        Assert.InRange(found.LowerBound!.Value, 1, 5);
        Assert.Equal(5, bench.To(50).LowerBound);
    }

    [Fact]
    public void Classes_are_reached_at_the_low_end_or_exceeded()
    {
        var bench = Bench.Of([20, 20], "weighted-arithmetic", [Raising("t.a", Ones, false, 90)],
            """, "classes": [ { "label": "high", "from": 80 }, { "label": "middle", "from": 50 }, { "label": "low", "from": 0 } ]""");
        Assert.Equal(2, Improvement.Search(bench.Document, bench.Profile, Target.OfClass(bench.Profile, "high")).Sets[0].Changes.Length);
        Assert.Equal(1, Improvement.Search(bench.Document, bench.Profile, Target.OfClass(bench.Profile, "middle")).LowerBound);
        Assert.Empty(Improvement.Search(bench.Document, bench.Profile, Target.OfClass(bench.Profile, "low")).Sets[0].Changes);
        Assert.Throws<ArgumentException>(() => Target.OfClass(bench.Profile, "highest"));
    }

    [Fact]
    public void Advice_that_throws_is_a_fault_of_its_criterion() =>
        Assert.Equal(("t.a", "advice-threw"), Assert.Throws<CriterionFaultException>(() => Of("minimum", new Knobs("t.a", Ones, true, [("t.none", 1)])).To(80))
            .Faults.Select(fault => (fault.Criterion, fault.Code)).Single());

    static Knobs Raising(string id, string[] names, bool lowest, decimal to) => new(id, names, lowest, [.. names.Select(name => (name, to))]);

    static Bench Of(string aggregate, Knobs criterion) => Bench.Of([20, 20], aggregate, [criterion]);
}
