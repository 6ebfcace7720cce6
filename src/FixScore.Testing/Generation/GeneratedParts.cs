using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class GeneratedParts
{
    static readonly ImmutableArray<string> Kinds = ["smartphone", "slate-tablet", "laptop", "vacuum-cleaner"];

    public static void Add(RecordBuilder to, Plan plan, Dice dice)
    {
        to.Device(device => device with
        {
            Kind = dice.Pick(Kinds),
            Foldable = dice.Chance(10),
            Released = dice.Chance(70) ? new(2020 + dice.Between(0, 5), dice.Between(1, 12), 1) : null,
            IngressProtection = dice.Chance(40) ? "IP68" : null,
            Price = Price(dice, 1500),
        });
        foreach (var part in plan.Parts) to.Part(part.Role, on: Ridden(part, dice), configure: entry => Described(entry, dice));
        if (dice.Chance(60)) to.With(record => record with { Absent = [.. dice.Some(plan.Unused, 20)] });
    }

    public static Price? Price(Dice dice, int most) => dice.Number(5, most) is { } amount ? new(amount, "EUR", dice.Flag()) : null;

    static string? Ridden(PlannedPart part, Dice dice) => part.Carrier is not null && dice.Chance(15) ? part.Carrier : null;

    static Part Described(Part part, Dice dice) => part with
    {
        Specs = part.Role == Roles.Battery ? BatterySpecs(dice) : [],
        Serialised = dice.Chance(30) ? Serialisation(dice) : null,
        Hazards = dice.Chance(50) ? [.. dice.Some(Enum.GetValues<Hazard>(), 10)] : default,
        PerUnit = dice.Chance(20) ? [new() { Unit = "unit-a", Marking = $"m-{dice.Between(1, 99)}" }] : [],
    };

    static ImmutableArray<Spec> BatterySpecs(Dice dice) => dice.Some<Spec>(
    [
        new() { Name = "rated-capacity", Value = dice.Certain(1000, 9000), Unit = "mAh" },
        new() { Name = "cycles-to-80-percent", Value = dice.Certain(300, 1500), Unit = "1" },
        new() { Name = "capacity-after-500-cycles", Value = dice.Certain(50, 100), Unit = "%" },
    ], 70);

    static Serialisation Serialisation(Dice dice) => new()
    {
        Notify = dice.Word<SerialAction>(),
        Authorise = dice.Word<SerialAction>(),
        AccessDays = dice.Number(0, 30),
        Audience = dice.Word<Audience>(),
    };
}
