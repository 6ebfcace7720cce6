using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Sensitivity;

namespace FixScore.Analysis.Tests.Sensitivity;

// By hand, no source: two devices and two lines of equal weight, whose order turns under some ways of one choice.
public sealed class ProfileRankShiftTests
{
    static readonly RecordDocument Steady = ChoiceBench.Record("steady", 50, 50);

    // 60 and 40 against 40 and 59.2: 50 to 49.6; with the first line times 0.95 it is 48.5 to 48.6, times 0.9 47 to 47.6. So 2 of 5 factors turn it.
    [Fact]
    public void Where_only_bands_act_all_variance_is_theirs() =>
        OnlyActs("bands of banded", 0.4, ChoiceBench.Profile(), ChoiceBench.Record("a", 60, 40), ChoiceBench.Record("b", 40, 59.2m));

    // 20 and 100 make 60 against 50; the gate caps it at 40. One way of two turns the order.
    [Fact]
    public void Where_only_gates_act_all_variance_is_theirs() =>
        OnlyActs("gates", 0.5, ChoiceBench.Profile(ChoiceBench.Gate), ChoiceBench.Record("a", 20, 100), Steady);

    // Nothing and 60 against 50: 55 with the whole scale, 30 with the worst, 60 when left out.
    [Fact]
    public void Where_only_the_policy_for_the_unknown_acts_all_variance_is_its() =>
        OnlyActs("unknown", 1 / 3.0, ChoiceBench.Profile(), ChoiceBench.Record("a", null, 60), Steady);

    // 20 and 100 make 60 with weights 1 and 1, 40 with 3 and 1, against 50.
    [Fact]
    public void Where_only_readings_act_all_variance_is_theirs() =>
        OnlyActs("readings", 0.5, ChoiceBench.Profile(ChoiceBench.Reading), ChoiceBench.Record("a", 20, 100), Steady);

    // The gate closes at 31 x 0.95 and 31 x 0.9, where it caps 65.5 to 40 against 50; it does so under half of the draws. It needs both choices.
    [Fact]
    public void A_gate_closes_at_what_bands_make_of_its_line()
    {
        var (inputs, indices) = ChoiceBench.Alone(ChoiceBench.Profile(ChoiceBench.Gate), ChoiceBench.Record("a", 31, 100), Steady);
        Support.Near(0.2, indices.Mean, 0.03);
        var gates = indices.Inputs[Number(inputs, "gates")];
        Assert.True(gates.Total > gates.First + 0.2);
    }

    // A gate that only open observations would close caps nothing, as stated.
    [Fact]
    public void A_gate_that_may_stay_open_does_not_cap()
    {
        var (_, indices) = ChoiceBench.Alone(ChoiceBench.Profile(ChoiceBench.Gate.Replace("\"banded\"", "\"plain\"", StringComparison.Ordinal)), ChoiceBench.Record("a", 80, null), Steady);
        // 80 and an open line make 65, the worst 40, level with the cap; only the worst turns the order.
        Support.Near(1 / 3.0, indices.Mean, 0.03);
    }

    [Fact]
    public void Rows_are_there_for_the_choices_that_a_profile_has()
    {
        Support.Equal(["banded", "plain", "rule", "bands of banded", "unknown"], Names(ChoiceBench.Profile()));
        Support.Equal(["banded", "plain", "rule", "bands of banded", "gates", "unknown", "readings"], Names(ChoiceBench.Profile(ChoiceBench.Gate + ChoiceBench.Reading)));
    }

    [Fact]
    public void The_runs_of_the_kernel_are_counted()
    {
        ImmutableArray<RecordDocument> records = [Steady, ChoiceBench.Record("a", 20, 100)];
        // 5 factors, 3 policies, 2 readings.
        Assert.Equal(30, ProfileRankShift.Of(records, ChoiceBench.Profile(ChoiceBench.Gate + ChoiceBench.Reading), options: new(64))!.RunsPerRecord);
        Assert.Equal(9, ProfileRankShift.Of(records, ChoiceBench.Profile(), new(0.2m, 3), new(64))!.RunsPerRecord);
    }

    [Fact]
    public void One_record_or_another_total_than_a_mean_has_no_study()
    {
        Assert.Null(ProfileRankShift.Of([Steady], ChoiceBench.Profile()));
        Assert.Null(ProfileRankShift.Of([Comparing.Bench.Document("a", 1, 2), Comparing.Bench.Document("b", 2, 1)], Comparing.Bench.Profile("p", 1, 1, "weighted-geometric")));
    }

    [Fact]
    public void Points_move_within_the_scale_and_keep_their_order()
    {
        Assert.Equal([0.9m, 0.95m, 1m, 1.05m, 1.1m], new BandVariation().Factors);
        decimal[] points = [0, 50, 95, 100];
        Assert.Equal([0m, 55m, 100m, 100m], points.Select(each => BandVariation.Moved(each, 1.1m, new(0, 100))));
        Assert.Equal([-10m, 44m], new[] { -10m, 50m }.Select(each => BandVariation.Moved(each, 0.9m, new(-10, 100))));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProfileRankShift.Of([Steady, Steady], ChoiceBench.Profile(), new(0.1m, 4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProfileRankShift.Of([Steady, Steady], ChoiceBench.Profile(), new(1.1m)));
    }

    [Fact]
    public void Bands_that_do_not_move_have_no_effect()
    {
        var still = ProfileRankShift.Of([Steady, ChoiceBench.Record("a", 20, 100), ChoiceBench.Record("b", 90, 15)], ChoiceBench.Profile(), new(0m), new(256))!;
        Assert.True(still.Indices.Variance > 0);
        Assert.Equal(default, still.Indices.Inputs[Number(still.Inputs, "bands of banded")]);
    }

    [Fact]
    public void The_same_bits_come_of_one_thread_and_of_many()
    {
        ImmutableArray<RecordDocument> records = [Steady, ChoiceBench.Record("a", 28, 100), ChoiceBench.Record("b", null, 15), ChoiceBench.Record("c", 70, 36)];
        var profile = ChoiceBench.Profile(ChoiceBench.Gate + ChoiceBench.Reading);
        var one = ProfileRankShift.Of(records, profile, options: new(500, 3))!;
        foreach (var threads in (int[])[2, 7])
        {
            var many = ProfileRankShift.Of(records, profile, options: new(500, 3) { Threads = threads })!;
            Assert.Equal((one.Indices.Mean, one.Indices.Variance), (many.Indices.Mean, many.Indices.Variance));
            Support.Equal(one.Indices.Inputs, many.Indices.Inputs);
        }
    }

    // Saltelli et al. 2010: 0 <= first <= total <= 1; estimates keep it within their errors.
    [Fact]
    public void Indices_lie_from_0_to_1_and_the_first_is_not_above_the_total()
    {
        var value = Gen.Int[0, 100].Select(each => each < 8 ? (decimal?)null : each);
        Gen.Select(Gen.Select(value, value).Array[2, 5], Gen.Int[1, 9], Gen.Int[1, 9]).Sample((values, banded, plain) =>
        {
            ImmutableArray<RecordDocument> records = [.. values.Select((each, i) => ChoiceBench.Record($"r{i}", each.Item1, each.Item2))];
            var study = ProfileRankShift.Of(records, ChoiceBench.Profile(ChoiceBench.Gate + ChoiceBench.Reading, banded, plain), options: new(512))!;
            Assert.All(study.Indices.Inputs, index =>
            {
                var (first, total) = ((5 * index.FirstError) + 0.02, (5 * index.TotalError) + 0.02);
                Assert.InRange(index.First, -first, 1 + first);
                Assert.InRange(index.Total, 0, 1 + total);
                Assert.True(index.First <= index.Total + first + total);
            });
        }, iter: 40);
    }

    static void OnlyActs(string choice, double mean, Profile profile, params ImmutableArray<RecordDocument> records)
    {
        var (inputs, indices) = ChoiceBench.Alone(profile, records);
        Support.Near(mean, indices.Mean, 0.03);
        foreach (var (i, input) in inputs.Index())
            if (input.Name != choice) Assert.Equal(default, indices.Inputs[i]);
        Support.Near(1, indices.Inputs[Number(inputs, choice)].First, 0.08);
        Support.Near(1, indices.Inputs[Number(inputs, choice)].Total, 0.08);
    }

    static int Number(ImmutableArray<RankShiftInput> inputs, string name) => inputs.Select(input => input.Name).ToImmutableArray().IndexOf(name);

    static IEnumerable<string> Names(Profile profile) =>
        ProfileRankShift.Of([Steady, ChoiceBench.Record("a", 20, 100)], profile, options: new(8))!.Inputs.Select(input => input.Name);
}
