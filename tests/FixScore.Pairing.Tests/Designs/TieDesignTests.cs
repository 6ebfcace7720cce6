using FixScore.Pairing.Designs;
using FixScore.Pairing.Ties;
using static FixScore.Pairing.Tests.Bench;
using static FixScore.Pairing.Tests.Designs.Outcomes;

namespace FixScore.Pairing.Tests.Designs;

public sealed class TieDesignTests
{
    // Redundancy of the double-error-correcting BCH codes of length 15, 31, 63, 127: 8, 10, 12, 14 (Bose & Ray-Chaudhuri 1960,
    // from memory).
    [Theory]
    [InlineData(15, 8)]
    [InlineData(31, 10)]
    [InlineData(63, 12)]
    [InlineData(127, 14)]
    public void The_bound_is_that_of_the_known_codes(int parts, int trials) => Assert.Equal(trials, TieDesigns.SeparatingBound(parts));

    // The binary repetition code of length 5 is perfect: 1 + 5 + 10 = 2⁴ outcomes (elementary).
    [Fact]
    public void Five_parts_take_four_trials_and_use_every_outcome()
    {
        var design = TieDesigns.Separating(Parts(5));
        Assert.Equal(4, design.Trials.Length);
        Assert.Equal(15, Patterns(design).Distinct().Count());
    }

    [Fact]
    public void Every_single_tie_shows_an_outcome_of_its_own()
    {
        foreach (var parts in Enumerable.Range(0, 71).Append(127).Append(200))
        {
            var design = TieDesigns.Separating(Parts(parts));
            Assert.InRange(design.Trials.Length, InformationBounds.OneTie(parts), TieDesigns.SeparatingBound(parts));
            var patterns = Patterns(design).ToArray();
            Assert.Equal(patterns.Length, patterns.Where(word => word.Contains('1', StringComparison.Ordinal)).Distinct().Count());
            Assert.All(design.Trials, trial => Assert.NotEmpty(trial));
        }
    }

    // The longest binary linear codes of distance 5 with redundancy 5 to 8 have length 6, 8, 11 and 17 (tables of linear
    // codes, from memory).
    [Theory]
    [InlineData(6, 5)]
    [InlineData(8, 6)]
    [InlineData(11, 7)]
    [InlineData(17, 8)]
    public void Short_designs_are_as_short_as_the_best_linear_codes(int parts, int trials) =>
        Assert.Equal(trials, TieDesigns.Separating(Parts(parts)).Trials.Length);

    [Fact]
    public void More_parts_than_the_field_has_are_refused()
    {
        Assert.Equal(20, TieDesigns.Separating(Parts(1023)).Trials.Length);
        Assert.Throws<ArgumentException>(() => TieDesigns.Separating(Parts(1024)));
    }

    [Fact]
    public void What_a_design_does_not_tell_apart_is_named()
    {
        SwapDesign design = new(["a", "b", "c"], [["a"], ["a", "b"]]);
        Assert.Equal(
            ["a + main board, a + c", "b + main board, b + c", "c + main board"],
            TieDesigns.NotToldApart(design).Select(set => string.Join(", ", set)));
    }

    [Fact]
    public void A_separating_design_leaves_nothing_to_name() =>
        Assert.All(Enumerable.Range(1, 20), parts => Assert.Empty(TieDesigns.NotToldApart(TieDesigns.Separating(Parts(parts)))));

    [Fact]
    public void The_proving_design_proves_each_single_tie()
    {
        var design = TieDesigns.Proving(Parts(6));
        Assert.Equal(7, design.Trials.Length);
        string?[] partners = [null, .. design.Parts];
        foreach (var tie in design.Parts.SelectMany(part => partners.Where(with => with != part), (part, with) => new Tie(part, with)))
            AssertProven(design, tie);
    }

    static void AssertProven(SwapDesign design, Tie tie)
    {
        var broken = TieDesigns.BrokenIn(design, tie);
        var trials = design.Trials.Select((trial, t) =>
            Swap($"t{t}", trial.Select(part => $"{part}=b").Joined(), broken.Contains(t) ? Warns() : Works()));
        var record = Device([Board, .. design.Parts.Select(Part)], [], trials);
        var context = Assert.Single(new RecordCase(record).Derive<PairTies>().Contexts);
        var real = context.Of(tie.Part, tie.With)!;
        Assert.Equal(Verdict.Paired, real.Verdict);
        Assert.All(context.ToBoard.Concat(context.Between), each => Assert.Equal(each == real ? Verdict.Paired : Verdict.Cleared, each.Verdict));
    }

    static IEnumerable<string> Patterns(SwapDesign design) => design.Parts.Select(part => Word(design, part))
        .Concat(design.Parts.SelectMany((one, i) => design.Parts.Skip(i + 1).Select(other => Apart(design, one, other))));
}
