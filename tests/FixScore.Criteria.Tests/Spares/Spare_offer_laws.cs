using FixScore.Criteria.Spares;

namespace FixScore.Criteria.Tests.Spares;

/// <summary>What holds for both criteria that judge a part's spares.</summary>
public sealed class Spare_offer_laws
{
    static readonly SpareTermsCriterion Terms = new();
    static readonly SparePriceRatioCriterion PriceRatio = new();
    static readonly (Option, object) Delivery = (SpareTermsOptions.Measure, SpareMeasure.DeliveryDays);

    static readonly Gen<Spare> AnySpare = Gen.Select(
        Gen.Int[0, 2], Gen.Enum<Audience>(), Gen.Int[0, 12], Gen.Int[1, 40], Gen.Int[0, 400], Gen.Int[0, 3],
        (part, audience, years, days, price, kind) => Offered.Spare(Offered.Roles[part], audience) with
        {
            Years = years,
            DeliveryDays = days,
            Price = new(price, kind == 0 ? "SEK" : "EUR", kind > 1),
        });

    static readonly Gen<TeardownRecord> Records = Gen.Select(AnySpare.Array[0, 4], Gen.Int[0, 2], (spares, tied) =>
    {
        var record = Offered.With(spares);
        return record with
        {
            Device = record.Device with { Price = new(500, "EUR", true) },
            Joints = tied == 0 ? [] : [Sample.Joint("j", JointKind.Adhesive, Offered.Roles[0], Offered.Roles[tied]) with { Integral = true }],
        };
    });

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Records, Gen.Int[0, 7]).Sample((record, what) =>
    {
        foreach (var part in Offered.Roles[..3])
            Assert.All(Scores(record, part).Zip(Scores(Without(record, what), part)), pair => Assert.True(pair.Second.Contains(pair.First)));
    });

    [Fact]
    public void One_more_spare_never_lowers_the_score() => Gen.Select(Records.Where(record => record.Spares.Count > 0), AnySpare).Sample((record, more) =>
    {
        var part = record.Spares[0].Part;
        var added = record with { Spares = [.. record.Spares, more] };
        Assert.All(Scores(record, part).Zip(Scores(added, part)), pair => Assert.True(pair.First.Low <= pair.Second.Low && pair.First.High <= pair.Second.High));
    });

    [Fact]
    public void The_order_of_spares_does_not_matter() => Records.Sample(record =>
        Assert.Equal(Scores(record, "battery"), Scores(record with { Spares = [.. record.Spares.Reverse()] }, "battery")));

    [Fact]
    public void Reasons_point_at_what_is_there() => Records.Sample(record =>
    {
        Terms.On(record, "battery").PointsInto(record);
        PriceRatio.On(record, "battery").PointsInto(record);
    });

    static Interval[] Scores(TeardownRecord record, string part) =>
        [Terms.On(record, part).Known(), Terms.On(record, part, Delivery).Known(), PriceRatio.On(record, part).Known()];

    static TeardownRecord Without(TeardownRecord record, int what) => what switch
    {
        0 => record with { Spares = default },
        1 => record with { Joints = default },
        2 => record with { Device = record.Device with { Price = null } },
        3 => record with { Device = record.Device with { Price = record.Device.Price! with { TaxIncluded = null } } },
        _ => record with { Spares = [.. record.Spares.Select((spare, i) => i == 0 ? Opened(spare, what) : spare)] },
    };

    static Spare Opened(Spare spare, int what) => what switch
    {
        4 => spare with { Audience = default },
        5 => spare with { Years = null, DeliveryDays = null },
        6 => spare with { Price = null },
        _ => spare with { Price = spare.Price! with { TaxIncluded = null } },
    };
}
