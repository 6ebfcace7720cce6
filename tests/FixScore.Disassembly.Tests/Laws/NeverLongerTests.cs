using FixScore.Disassembly.Tests.Generated;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Laws;

/// <summary>Changes to a record that cannot make a way longer.</summary>
public sealed class NeverLongerTests
{
    [Fact]
    public void A_copy_of_an_operation_with_other_tools_never_makes_a_way_longer() => Check(0, (record, random) =>
    {
        var copy = random.Pick([.. record.Operations]) with { Id = "copy", Tools = [random.Pick([.. record.Tools]).Id], OrTools = [] };
        return record with { Operations = [.. record.Operations, copy] };
    });

    [Fact]
    public void Other_tools_that_do_as_well_never_make_a_way_longer() => Check(10_000, (record, random) =>
    {
        var chosen = random.Next(record.Operations.Count);
        return record with
        {
            Operations = [.. record.Operations.Select((each, i) => i != chosen ? each : each with { OrTools = each.OrTools.Add([random.Pick([.. record.Tools]).Id]) })],
        };
    });

    [Fact]
    public void A_joint_less_never_makes_a_way_longer() => Check(20_000, (record, random) =>
    {
        var idle = record.Joints.Where(joint => CanGo(record, joint)).ToArray();
        return idle.Length == 0 ? record : Scrubbing.Without(record, random.Pick(idle).Id);
    });

    [Fact]
    public void A_joint_in_the_open_never_makes_a_way_longer() => Check(30_000, (record, random) =>
    {
        var chosen = random.Next(record.Joints.Count);
        return record with { Joints = [.. record.Joints.Select((each, i) => i == chosen ? each with { Under = [] } : each)] };
    });

    [Fact]
    public void A_condition_less_never_makes_a_way_longer() => Check(40_000, (record, random) =>
    {
        var chosen = random.Next(record.Operations.Count);
        return record with { Operations = [.. record.Operations.Select((each, i) => i == chosen ? each with { After = [], DirectlyAfter = null } : each)] };
    });

    // Not the last joint of a part, because then nothing would be known of it, and not one that something waits for or that is named as held or harmed.
    static bool CanGo(TeardownRecord record, Joint joint) =>
        !joint.Integral
        && joint.Joins.All(part => record.Joints.Any(other => other != joint && !other.Integral && other.Joins.Contains(part)))
        && !record.Operations.Any(operation => operation.HoldsBy.Contains(joint.Id) || operation.Damages.Contains(joint.Id) || operation.After.Any(Names))
        && !record.Milestones.Any(milestone => milestone.When.Any(Names));

    static bool Names(Condition item) => item is not (Condition.Done or Condition.Removed or Condition.Away);

    static void Check(int firstSeed, Func<TeardownRecord, Random, TeardownRecord> change)
    {
        var compared = 0;
        foreach (var (record, random) in Bench.Records(150, firstSeed))
            foreach (var (before, after) in record.Beside(change(record, random)).Where(pair => pair.One.Reachability == Reachability.Reachable))
            {
                Assert.True(after.IsNoLongerThan(before), $"{record.Id} {before.Query.Parts[0]} {before.Query.Cost}: {after.Reachability} {after.Steps} {after.Operations} {after.Seconds}");
                compared++;
            }
        Assert.True(compared > 500);
    }
}
