using FixScore.Criteria.Spares;

namespace FixScore.Criteria.Tests.Spares;

/// <summary>Bands from memory of the French orders of 29 December 2020: full marks up to 10 %, none from 30 % on, a line between.</summary>
public sealed class Spare_price_ratio_tests
{
    static readonly SparePriceRatioCriterion Criterion = new();
    static readonly Spare Sold = Offered.Spare("battery", Audience.Public) with { Price = Euro(80) };

    [Theory]
    [InlineData(20, 100)] // 5 %
    [InlineData(40, 100)] // 10 %: from memory, weak
    [InlineData(80, 50)] // 20 %
    [InlineData(120, 0)] // 30 %: from memory, weak
    [InlineData(500, 0)]
    public void A_cheaper_spare_has_more_points(int price, int points) => Scores(points, Sold with { Price = Euro(price) });

    [Fact]
    public void Ranges_of_both_prices_give_all_that_the_ratio_can_be()
    {
        Scores(new(25, 75), Sold with { Price = Euro(new(60, 100)) });
        Scores(new(0, 75), Sold with { Price = Euro(new(60, null)) });
        Assert.Equal(new Interval(0, 50), Criterion.On(Priced(Euro(new(0, 400)), Sold), "battery").Score);
        Assert.Equal(new Interval(50, 100), Criterion.On(Priced(Euro(new(400, null)), Sold), "battery").Score);
        Assert.Equal(new Interval(0, 100), Criterion.On(Priced(Euro(0), Sold with { Price = Euro(0) }), "battery").Score);
    }

    [Fact]
    public void A_quotient_without_end_does_not_cross_a_limit()
    {
        (Option, object) bands = (SparePriceRatioOptions.Bands, Bands.AtMost((0.333333333333333m, 100), (0.333333333333334m, 40)));
        Assert.Equal(40, Criterion.On(Priced(Euro(3), Sold with { Price = Euro(1) }), "battery", bands).Score);
    }

    [Fact]
    public void Prices_in_different_currencies_are_not_compared()
    {
        var outcome = Scores(new(0, 100), Sold with { Price = new(80, "SEK", true) });
        Assert.Equal("The spare for battery is priced in SEK, the device in EUR: not compared.", outcome.Because("different-currencies").Text);
    }

    [Fact]
    public void Prices_with_and_without_tax_are_not_compared()
    {
        Scores(new(0, 100), Sold with { Price = new(80, "EUR", false) }).Because("different-tax");
        Scores(new(0, 100), Sold with { Price = new(80, "EUR") }).Because("tax-unknown");
        Assert.Equal(50, Criterion.On(Priced(new(400, "EUR", false), Sold with { Price = new(80, "EUR", false) }), "battery").Score);
    }

    [Fact]
    public void A_spare_that_nobody_can_buy_has_the_lowest_points_and_one_that_may_be_such_spans_both()
    {
        Scores(0, Sold with { Audience = Audience.Nobody }).Because("spare-not-sold");
        Scores(new(0, 50), Sold with { Audience = default });
    }

    [Fact]
    public void A_bundle_stands_with_its_price_and_the_reason_says_so()
    {
        var reason = Scores(50, Sold with { OnlyBundledWith = ["back-cover", "speaker"] }).Because("bundle-price");
        Assert.Equal("The spare for battery is only sold together with back-cover, speaker: its price is that of the bundle.", reason.Text);
    }

    [Fact]
    public void The_best_spare_counts() => Scores(100, Sold, Sold with { Price = Euro(30) });

    [Fact]
    public void Without_a_price_of_spare_or_device_the_answer_is_unknown()
    {
        Unknown("price", Priced(Euro(400), Sold with { Price = null }));
        Unknown("price", Priced(null, Sold));
        Unknown("a spare for it", Priced(Euro(400), Offered.Spare("speaker", Audience.Public)));
        Unknown("spares", Priced(Euro(400)) with { Spares = default });
        Assert.Equal(0, Criterion.On(Priced(null, Sold with { Audience = Audience.Nobody }), "battery").Score);
        Assert.Equal(0, Criterion.On(Priced(null), "battery").Score);
    }

    [Fact]
    public void A_reason_names_the_ratio_and_points_at_both_prices()
    {
        var reason = Scores(50, Sold).Because("price-ratio");
        Assert.Equal("The spare for battery costs 0.2 of the price of the device.", reason.Text);
        Assert.Equal(["/spares/0", "/device/price"], reason.Pointers.Select(pointer => pointer.Text));
        Assert.Equal<Interval?>(50, reason.Points);
    }

    static void Unknown(string missing, TeardownRecord record)
    {
        var outcome = Criterion.On(record, "battery");
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal(missing, Assert.Single(outcome.Missing).What);
    }

    static Outcome Scores(Interval expected, params IEnumerable<Spare> spares)
    {
        var outcome = Criterion.On(Priced(Euro(400), spares), "battery");
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(Priced(Euro(400), spares));
        return outcome;
    }

    static Price Euro(Quantity amount) => new(amount, "EUR", TaxIncluded: true);

    static TeardownRecord Priced(Price? device, params IEnumerable<Spare> spares)
    {
        var record = Offered.With(spares);
        return record with { Device = record.Device with { Price = device } };
    }
}
