using FixScore.Records;

namespace FixScore.Testing;

static class GeneratedSupply
{
    public static void Add(RecordBuilder to, Plan plan, TeardownRecord sofar, Dice dice)
    {
        foreach (var subject in dice.Some(Enum.GetValues<DocumentSubject>(), 40))
            to.Document(subject, dice.Word<Audience>(), dice.Word<DocumentCost>(), document => document with { Years = dice.Number(1, 12) });
        foreach (var part in dice.Some(plan.Parts, 50)) to.Spare(part.Role, dice.Word<Audience>(), spare => Described(spare, sofar, dice));
        if (dice.Chance(60)) to.Support(_ => Support(dice));
    }

    static Spare Described(Spare spare, TeardownRecord sofar, Dice dice) => spare with
    {
        Years = dice.Number(1, 12),
        DeliveryDays = dice.Number(1, 30),
        Price = GeneratedParts.Price(dice, 300),
        FastenersIncluded = dice.Between(1, 3) switch
        {
            1 => null,
            2 => new(true, []),
            _ => new(false, dice.Some(sofar.Joints.Where(joint => joint.Joins.Contains(spare.Part)).Select(joint => joint.Id), 60)),
        },
    };

    static Support Support(Dice dice) => new()
    {
        SecurityUpdateYears = dice.Number(0, 10),
        CorrectiveUpdateYears = dice.Number(0, 10),
        FunctionalityUpdateYears = dice.Number(0, 10),
        CountedFrom = dice.Word<CountedFrom>(),
    };
}
