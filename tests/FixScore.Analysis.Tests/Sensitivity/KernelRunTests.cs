using FixScore.Analysis.Sensitivity.Profiles;

namespace FixScore.Analysis.Tests.Sensitivity;

// By hand, no source.
public sealed class KernelRunTests
{
    static readonly RecordDocument Known = ChoiceBench.Record("known", 60, 40);
    static readonly RecordDocument Open = ChoiceBench.Record("open", null, 40);

    // The end of the straight line gives all points already: it cannot rise.
    [Fact]
    public void A_line_has_the_points_of_its_bands_times_the_factor()
    {
        var runs = Runs(ChoiceBench.Profile());
        Assert.Equal([0.54m, 0.57m, 0.6m, 0.6m, 0.6m], Enumerable.Range(0, 5).Select(factor => runs.Line(0, 0, 0, factor, 0)!.Value));
        Assert.All(Enumerable.Range(0, 5), factor => Assert.Equal(0.4m, runs.Line(0, 0, 0, factor, 1)));
    }

    // As the profile says (the whole scale), the worst, left out.
    [Fact]
    public void An_unknown_line_is_in_the_middle_or_worst_or_left_out() =>
        Assert.Equal([0.5m, 0m, null], Enumerable.Range(0, 3).Select(policy => Runs(ChoiceBench.Profile()).Line(1, 0, policy, 2, 0)));

    [Fact]
    public void A_criterion_is_asked_once_for_each_of_its_options()
    {
        var counting = new Counting();
        var profile = LeafChange.Of(ChoiceBench.Profile(), leaf => leaf.Id == "banded" ? leaf with { Criterion = leaf.Criterion with { Item = counting.Over(leaf.Criterion.Item) } } : leaf);
        var runs = Runs(profile);
        // Two records and five factors; three policies share what was said.
        Assert.Equal(10, counting.Asked);
        Assert.Equal(0.57m, runs.Line(0, 0, 2, 1, 0));
    }

    static KernelRuns Runs(Profile profile) => KernelRuns.Of([Known, Open], ProfileChoices.Of(profile, new())!, 1, default);

    sealed class Counting : IDeviceCriterion
    {
        IDeviceCriterion inner = null!;

        public int Asked { get; private set; }

        public CriterionInfo Info => inner.Info;

        public Counting Over(ICriterion criterion)
        {
            inner = (IDeviceCriterion)criterion;
            return this;
        }

        public Outcome Judge(DeviceContext context)
        {
            Asked++;
            return inner.Judge(context);
        }
    }
}
