using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class GeneratedWork
{
    static readonly ImmutableArray<string> Tools = ["tool-1", "tool-2", "tool-3"];

    public static void Add(RecordBuilder to, Plan plan, TeardownRecord sofar, Dice dice)
    {
        foreach (var tool in Tools) to.Tool(tool, dice.CertainWord<ToolClass>(), entry => Supplied(entry, dice));
        to.Tool("warm-plate", ToolClass.Commercial, tool => tool with { HeatC = dice.Certain(50, 120) });
        var done = ImmutableArray<Condition>.Empty;
        foreach (var part in plan.Parts.Reverse().Where(part => part.Opened))
        {
            var joints = sofar.Joints.Where(joint => joint.Joins[0] == part.Role).Select(joint => joint.Id);
            var heated = dice.Chance(20);
            if (heated) to.Operation($"warm-{part.Role}", OperationAction.Heat, ["warm-plate"], after: After(done, dice), seconds: dice.Number(60, 300));
            AddRemoval(to, part, heated, dice.Some(joints, 90), After(done, dice), dice);
            done = done.Add(dice.Chance(50) ? new Condition.Done($"take-{part.Role}") : new Condition.Removed(part.Role));
        }
        if (!done.IsEmpty) to.Milestone("opened", done[0]);
    }

    static void AddRemoval(
        RecordBuilder to, PlannedPart part, bool heated, ImmutableArray<string> undoes, ImmutableArray<Condition> after, Dice dice)
    {
        to.Operation($"take-{part.Role}", dice.Exactly<OperationAction>(), InHand(dice), undoes, [part.Role], after, dice.Number(5, 400),
            operation => operation with
            {
                DirectlyAfter = heated ? $"warm-{part.Role}" : null,
                OrTools = dice.Chance(15) ? [[dice.Pick(Tools)]] : [],
                Damages = dice.Chance(8) ? [part.Role] : [],
                ReassemblySeconds = dice.Number(5, 400),
                Hazards = dice.Chance(50) ? [.. dice.Some(Enum.GetValues<Hazard>(), 10)] : default,
                Environment = dice.Word<WorkEnvironment>(),
                Skill = dice.Word<Skill>(),
                Outcomes = dice.Chance(20) ? [new() { Unit = "unit-a", Result = dice.CertainWord<OutcomeResult>() }] : [],
            });
    }

    static Tool Supplied(Tool tool, Dice dice) => dice.Chance(20) ? tool with { SuppliedWith = [Tool.Product] } : tool;

    static EntryList<string> InHand(Dice dice) => dice.Chance(15) ? default : EntryList.Of(dice.Some(Tools, 35));

    static ImmutableArray<Condition> After(ImmutableArray<Condition> done, Dice dice) => dice.Between(1, 10) switch
    {
        _ when done.IsEmpty => [],
        <= 5 => [],
        <= 7 => [dice.Pick(done)],
        <= 8 => [new Condition.AnyOf(dice.Shuffled(done)[..Math.Min(2, done.Length)])],
        _ => [new Condition.Done("opened")],
    };
}
