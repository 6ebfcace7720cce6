using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Routes;

/// <summary>Why there is no route, or none is known: code, words and the entries that show it.</summary>
public sealed class RouteReasonTests
{
    [Fact]
    public void No_list_of_operations() => Told(
        Reachability.Unknown, "route.lists-unknown", "The record has no list of operations, so nobody knows the way to 'lid'.", ["/parts/0"], Held().ToCase().RouteTo("lid"));

    [Fact]
    public void No_list_of_joints() => Told(
        Reachability.Unknown, "route.lists-unknown", "The record has no list of joints, so nobody knows the way to 'lid'.", ["/parts/0"],
        new RecordBuilder().Part("lid").Operation("lift", OperationAction.Lift, [], default, ["lid"]).ToCase().RouteTo("lid"));

    [Fact]
    public void A_part_nothing_names() => Told(
        Reachability.Unknown, "route.not-described", "No joint and no operation names 'spring'.", ["/parts/2"], Held("turn").Part("spring").ToCase().RouteTo("spring"));

    [Fact]
    public void A_part_an_operation_moves_is_described() => Assert.Equal(
        Reachability.Reachable, Held("turn").Part("spring").Operation("push", OperationAction.Other, [], configure: push => push with { Moves = ["spring"] }).ToCase().RouteTo("spring").Reachability);

    [Fact]
    public void One_joint_nothing_undoes() => Told(
        Reachability.Unknown, "route.no-operation", "No operation undoes 'clip', which holds 'lid'.", ["/joints/1"], Held("turn").Joint("clip", ["lid", "board"], JointKind.SnapFit).ToCase().RouteTo("lid"));

    [Fact]
    public void Two_joints_nothing_undoes() => Told(
        Reachability.Unknown, "route.no-operation", "No operation undoes 'clip', 'glue', which hold 'lid'.", ["/joints/1", "/joints/2"],
        Held("turn").Joint("clip", ["lid", "board"], JointKind.SnapFit).Joint("glue", ["lid", "board"], JointKind.Adhesive).ToCase().RouteTo("lid"));

    [Fact]
    public void A_part_the_assessor_could_not_reach() => Told(
        Reachability.Unreachable, "route.not-possible", "The assessor found that 'core' cannot be reached.", ["/parts/2"],
        Held("turn").Part("core", configure: part => part with { Reach = Reach.NotPossible }).ToCase().RouteToAll(["lid", "core"]));

    [Fact]
    public void Damage_as_the_only_way()
    {
        var route = Held().Operation("tear", OperationAction.Other, [], ["screw"], ["lid"], configure: tear => tear with { Damages = ["screw", "board"] }).ToCase().RouteTo("lid");
        Told(Reachability.Unreachable, "route.only-damage", "'lid' can be freed only by damaging 'board', 'screw'.", ["/parts/0"], route);
        Assert.Equal(["board", "screw"], route.Damages.AsEnumerable());
        Assert.Equal((null, null, null), (route.Steps, route.Operations, route.Seconds));
        Assert.Equal("tear", Assert.Single(route.Way!.Operations));
        Assert.Single(route.Ways);
    }

    [Fact]
    public void Conditions_that_nothing_meets_the_first_three_of_them()
    {
        var never = Enumerable.Range(1, 4).Select(number => new Condition.Undone($"seal{number}")).ToArray();
        var record = Held().Operation("turn", OperationAction.Unscrew, [], ["screw"], configure: turn => turn with { After = [.. never] });
        foreach (var condition in never) record.Joint(condition.Joint, ["board", "frame"], JointKind.Adhesive);
        Told(
            Reachability.Unreachable, "route.no-way",
            "No sequence of operations frees 'lid': nothing that can be done undoes 'seal1'; nothing that can be done undoes 'seal2'; nothing that can be done undoes 'seal3'.",
            ["/parts/0"], record.Part("frame").ToCase().RouteTo("lid"));
    }

    [Fact]
    public void What_is_missing_is_looked_for_behind_what_is_missing() => Told(
        Reachability.Unreachable, "route.no-way", "No sequence of operations frees 'lid': nothing that can be done removes 'board'.", ["/parts/0"],
        Held().Operation("turn", OperationAction.Unscrew, [], ["screw"], configure: turn => turn with { After = [new Condition.Done("wait")] })
            .Operation("wait", OperationAction.Other, configure: wait => wait with { After = [new Condition.Removed("board")] }).ToCase().RouteTo("lid"));

    [Fact]
    public void Conditions_that_wait_for_each_other()
    {
        var route = Held().Operation("turn", OperationAction.Unscrew, [], ["screw"], configure: turn => turn with { After = [new Condition.Done("wait")] })
            .Operation("wait", OperationAction.Other, configure: wait => wait with { After = [new Condition.Done("turn")] }).ToCase().RouteToAll(["lid", "board"]);
        Told(
            Reachability.Unreachable, "route.no-way",
            "No sequence of operations frees 'lid', 'board': what is needed waits for itself, or what must follow at once cannot.", ["/parts/0", "/parts/1"], route);
        Assert.True(route.IsOptimal);
    }

    static RecordBuilder Held(params string[] operations)
    {
        var record = new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw);
        foreach (var operation in operations) record.Operation(operation, OperationAction.Unscrew, [], ["screw"]);
        return record;
    }

    static void Told(Reachability reachability, string code, string text, string[] at, Route route)
    {
        Assert.Equal((reachability, code, text), (route.Reachability, route.Why?.Code, route.Why?.Text));
        Assert.Equal(at, route.Why!.Pointers.Select(pointer => pointer.Text));
    }
}
