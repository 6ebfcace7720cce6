using FixScore.Criteria.Cost;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Cost;

public sealed class Repair_cost_ratio_laws
{
    static readonly RepairCostRatioCriterion Criterion = new();

    static readonly Gen<Price?> AnyPrice = Gen.Select(Gen.Int[0, 300], Gen.Int[0, 100], Gen.Int[0, 9]).Select((low, more, kind) =>
        kind == 0 ? null : new Price(new Quantity(low, kind == 1 ? null : low + more), kind == 2 ? "USD" : "EUR", kind == 3 ? null : true));

    static readonly Gen<OneOf<Audience>> AnyAudience = Gen.Enum<Audience>().Array[0, 2].Select(words => new OneOf<Audience>([.. words.Distinct()]));

    static readonly Gen<Spare[]> Spares = Gen.Select(AnyPrice, AnyAudience, (price, audience) =>
        new Spare { Part = "battery", Audience = audience, Price = price }).Array[1, 3];

    static readonly Gen<Quantity?> Time = Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 500], Gen.Int[0, 5]).Select((low, more, kind) =>
        kind == 0 ? (Quantity?)null : new Quantity(low, kind == 1 ? null : low + more));

    static readonly Gen<TeardownRecord> Records = Gen.Select(Spares, AnyPrice, AnyPrice, Time, Time, Time).Select((spares, device, tape, seconds, wait, back) =>
        Priced.Phone(pull => pull with { Seconds = seconds, WaitSeconds = wait, ReassemblySeconds = back, Consumes = ["tape"] }).With(record => record with
        {
            Device = record.Device with { Price = device }, Spares = [.. spares],
            Consumables = [record.Consumables[0] with { Price = tape }, record.Consumables[1]],
        }).Build());

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Records, Gen.Enum<Waiting>(), Gen.Int[0, 9]).Where((_, waiting, _) => waiting != Waiting.LeaveOutRecorded)
        .Sample((record, waiting, what) => Assert.True(Of(Without(record, what), waiting).Contains(Of(record, waiting))));

    [Fact]
    public void A_dearer_spare_never_raises_the_score() => Gen.Select(Records, Gen.Int[1, 200]).Sample((record, more) =>
    {
        var dearer = record with { Spares = [.. record.Spares.Select(spare => spare with { Price = Plus(spare.Price, more) })] };
        var (before, after) = (Of(record, Waiting.Count), Of(dearer, Waiting.Count));
        Assert.True(after.Low <= before.Low && after.High <= before.High);
    });

    [Fact]
    public void A_higher_rate_never_raises_the_score() => Gen.Select(Records, Gen.Int[0, 200], Gen.Int[0, 200]).Sample((record, rate, more) =>
    {
        var (before, after) = (At(rate), At(rate + more));
        Assert.True(after.Low <= before.Low && after.High <= before.High);

        Interval At(decimal labour) => Criterion.On(record, "battery", (RepairCostRatioOptions.LabourRate, labour)).Known();
    });

    [Fact]
    public void The_order_of_spares_does_not_matter() => Records.Sample(record =>
        Assert.Equal(Of(record, Waiting.Count), Of(record with { Spares = [.. record.Spares.Reverse()] }, Waiting.Count)));

    [Fact]
    public void Numbers_at_the_ends_of_the_format_do_not_overflow() => Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool).Sample((spare, device, time) =>
    {
        static decimal End(bool high) => high ? 999_999_999_999_999m : 0.000000000001m;
        var record = Priced.Phone(
            pull => pull with { Seconds = End(time), ReassemblySeconds = End(time) }, each => each with { Price = Priced.Euro(End(spare)) }, Priced.Euro(End(device)));
        Assert.InRange(Criterion.On(record.Build(), "battery", (RepairCostRatioOptions.LabourRate, 10_000m)).Score.Low, 0, 100);
    });

    [Fact]
    public void Reasons_point_at_what_is_there() => Records.Sample(record => Criterion.On(record, "battery").PointsInto(record));

    static Interval Of(TeardownRecord record, Waiting waiting) => Criterion.On(record, "battery", (RepairCostRatioOptions.Waiting, waiting)).Known();

    static Price? Plus(Price? price, decimal more) => price is null ? null : price with { Amount = new(price.Amount.Min + more, price.Amount.Max + more) };

    static TeardownRecord Without(TeardownRecord record, int what) => what switch
    {
        0 => record with { Spares = [record.Spares[0] with { Price = null }, .. record.Spares.Skip(1)] },
        1 => record with { Spares = [record.Spares[0] with { Audience = default }, .. record.Spares.Skip(1)] },
        2 => record with { Spares = [.. record.Spares.Select(spare => spare with { Price = spare.Price is null ? null : spare.Price with { TaxIncluded = null } })] },
        3 => record with { Spares = default },
        4 => record with { Device = record.Device with { Price = null } },
        5 => record with { Consumables = [record.Consumables[0] with { Price = null }, record.Consumables[1]] },
        6 => Work(record, pull => pull with { Seconds = null, WaitSeconds = null }),
        7 => Work(record, pull => pull with { WaitSeconds = null }),
        8 => Work(record, pull => pull with { ReassemblySeconds = null }),
        _ => record with { Joints = default, Operations = default },
    };

    static TeardownRecord Work(TeardownRecord record, Func<Operation, Operation> change) => record with { Operations = [change(record.Operations[0])] };
}
