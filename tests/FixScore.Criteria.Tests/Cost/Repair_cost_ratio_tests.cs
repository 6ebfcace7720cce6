using FixScore.Criteria.Cost;
using FixScore.Testing;
using static FixScore.Criteria.Tests.Cost.Priced;

namespace FixScore.Criteria.Tests.Cost;

/// <summary>Own arithmetic; the default rate and points are own judgement, no source: 10 % of the device's price has the top, 50 % the bottom.</summary>
public sealed class Repair_cost_ratio_tests
{
    static readonly RepairCostRatioCriterion Criterion = new();

    // (60 + (1800 + 1800) / 3600 x 40) / 400 = 0.25, which is 25 of 40 parts away from the bottom.
    [Fact]
    public void Spare_and_an_hour_of_labour_are_a_quarter_of_the_price()
    {
        var outcome = On(Phone());
        Assert.Equal(62.5m, outcome.Score);
        Assert.Equal(
            "Replacing part battery costs 100 EUR: spare 60 EUR, consumables 0 EUR, labour 40 EUR. The device costs 400 EUR; the share is 0.25.",
            outcome.Because("cost-ratio").Text);
        Assert.Equal("Labour: 1800 s to take apart along the fastest route, 1800 s to put together, at 40 EUR an hour.", outcome.Because("labour").Text);
        Assert.Empty(outcome.Missing);
    }

    [Fact]
    public void The_rate_is_an_option() => Assert.Equal(87.5m, On(Phone(), (RepairCostRatioOptions.LabourRate, 0m)).Score);

    // 20 EUR more with four tapes: 120 / 400 = 0.3.
    [Fact]
    public void Each_use_of_a_consumable_is_paid_for() => Scores(50, Phone(pull => pull with { Consumes = ["tape", "tape", "tape", "tape"] }));

    [Fact]
    public void A_consumable_without_a_price_has_no_upper_end()
    {
        var outcome = On(Phone(pull => pull with { Consumes = ["cloth"] }));
        Assert.Equal(new Interval(0, 62.5m), outcome.Score);
        Assert.Equal(("/consumables/1", "price"), (outcome.Missing.Single().At.Text, outcome.Missing.Single().What));
        Assert.Contains("at least 100 EUR", outcome.Because("cost-ratio").Text, StringComparison.Ordinal);
    }

    // From (40 + 20) / 500 = 0.12 to (80 + 60) / 350 = 0.4.
    [Fact]
    public void Ranges_give_the_exact_hull() => Scores(
        new(25, 95),
        Phone(
            pull => pull with { Seconds = new(900, 2700), ReassemblySeconds = new(900, 2700) },
            spare => spare with { Price = Euro(new Quantity(40, 80)) },
            Euro(new Quantity(350, 500))));

    [Fact]
    public void Waiting_is_not_paid_for_unless_it_counts()
    {
        var waited = Phone(pull => pull with { WaitSeconds = 1800 }).Build();
        Assert.Equal(75, Criterion.On(waited, "battery").Score);
        Assert.Equal(62.5m, Criterion.On(waited, "battery", (RepairCostRatioOptions.Waiting, Waiting.Count)).Score);
    }

    [Fact]
    public void An_unrecorded_wait_is_anything_unless_only_recorded_ones_are_left_out()
    {
        var silent = Phone(pull => pull with { WaitSeconds = null }).Build();
        Assert.Equal(new Interval(62.5m, 75), Criterion.On(silent, "battery").Score);
        Assert.Equal("waitSeconds", Criterion.On(silent, "battery").Missing.Single().What);
        Assert.Equal(62.5m, Criterion.On(silent, "battery", (RepairCostRatioOptions.Waiting, Waiting.LeaveOutRecorded)).Score);
    }

    [Fact]
    public void Unknown_reassembly_has_no_upper_end_unless_a_factor_stands_in()
    {
        var silent = Phone(pull => pull with { ReassemblySeconds = null }).Build();
        Assert.Equal(new Interval(0, 75), Criterion.On(silent, "battery").Score);
        var assumed = Criterion.On(silent, "battery", (RepairCostRatioOptions.Reassembly, 1m));
        Assert.Equal(62.5m, assumed.Score);
        Assert.Equal("Putting together is assumed to take 1 times as long as taking apart: not all of it was observed.", assumed.Because("reassembly-assumed").Text);
        Assert.Equal("reassemblySeconds", assumed.Missing.Single().What);
    }

    [Fact]
    public void Unknown_seconds_have_no_upper_end() => Scores(new(0, 87.5m), Phone(pull => pull with { Seconds = null, WaitSeconds = null }));

    [Theory]
    [InlineData("USD", true)]
    [InlineData("EUR", false)]
    [InlineData("EUR", null)]
    public void A_price_in_another_currency_or_on_another_tax_basis_is_no_price(string currency, bool? tax)
    {
        var outcome = On(Phone(spare: spare => spare with { Price = new(60, currency, tax) }));
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal("/spares/0", outcome.Missing.Single().At.Text);
        Assert.NotEqual("price", outcome.Missing.Single().What);
    }

    [Fact]
    public void Without_a_price_of_the_device_it_is_unknown()
    {
        var outcome = On(Phone().Device(device => device with { Price = null }));
        Assert.Equal((OutcomeKind.Unknown, "/device", "price"), (outcome.Kind, outcome.Missing.Single().At.Text, outcome.Missing.Single().What));
        Assert.Equal("price.taxIncluded", On(Phone(device: Euro(400, null))).Missing.Single().What);
        Assert.Equal("price above 0", On(Phone(device: Euro(0))).Missing.Single().What);
        Scores(new(0, 100), Phone(device: Euro(new Quantity(0, null))));
    }

    [Fact]
    public void What_nobody_can_have_is_the_lowest()
    {
        Assert.Equal<Interval?>(0, On(Phone(spare: spare => spare with { Audience = Audience.Nobody })).Because("no-spare").Points);
        Scores(0, Phone().With(record => record with { Spares = [] }));
    }

    [Fact]
    public void An_unknown_audience_may_be_nobody()
    {
        var outcome = On(Phone(spare: spare => spare with { Audience = default }));
        Assert.Equal(new Interval(0, 62.5m), outcome.Score);
        Assert.Equal("audience", outcome.Missing.Single().What);
        Assert.Equal("/spares/0", outcome.Because("spare-not-certain").Pointers[0].Text);
    }

    [Fact]
    public void A_spare_that_is_not_listed_is_unknown()
    {
        Assert.Equal("", On(Phone().With(record => record with { Spares = default })).Missing.Single().At.Text);
        Assert.Equal("/spares", On(Phone(spare: spare => spare with { Part = "frame" })).Missing.Single().At.Text);
    }

    [Fact]
    public void The_cheapest_spare_counts() =>
        Scores(62.5m, Phone().Spare("battery", Audience.Repairers, spare => spare with { Price = Euro(90) }).Spare("battery", Audience.Nobody));

    [Fact]
    public void A_second_spare_without_a_price_may_be_cheaper() => Scores(new(62.5m, 100), Phone().Spare("battery", Audience.Public));

    [Fact]
    public void What_only_damage_frees_is_the_lowest() =>
        Assert.Equal<Interval?>(0, On(Phone(pull => pull with { Damages = ["frame"] })).Because("unreachable").Points);

    [Fact]
    public void A_part_whose_route_is_unknown_is_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, On(Phone(pull => pull with { Undoes = [] })).Kind);

    [Fact]
    public void New_adhesive_is_said_not_to_be_priced() => Assert.Equal(
        "New adhesive for glue is priced only as far as operations name it among what they use up.", On(Phone()).Because("adhesive-not-priced").Text);

    static void Scores(Interval expected, RecordBuilder builder) => Assert.Equal(expected, On(builder).Score);

    static Outcome On(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options)
    {
        var record = builder.Build();
        var outcome = Criterion.On(record, "battery", options);
        outcome.PointsInto(record);
        return outcome;
    }
}
