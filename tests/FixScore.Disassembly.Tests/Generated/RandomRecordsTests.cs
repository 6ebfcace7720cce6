using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>That the random records are worth the trouble: they show every case and ask for a search.</summary>
public sealed class RandomRecordsTests
{
    readonly SortedDictionary<string, int> seen = new(StringComparer.Ordinal);

    [Fact]
    public void They_show_every_case_often()
    {
        for (var seed = 0; seed < 2_000; seed++) Look(RandomRecords.Of(seed));
        string[] cases =
        [
            "Reachable", "Unknown", "Unreachable", "only with damage", "steps are a range", "not fully timed", "5 operations or more", "decided by the tools in hand",
            "decided by the order of the record", "riders", "groups", "contacts", "moves", "milestones",
        ];
        Assert.All(cases, each => Assert.True(seen.GetValueOrDefault(each) > 100, $"{each}: {seen.GetValueOrDefault(each)}"));
    }

    void Look(TeardownRecord record)
    {
        var truth = new Truth(record);
        Count("riders", record.Parts.Any(part => part.On is not null));
        Count("groups", record.Joints.Any(joint => joint.Integral));
        Count("contacts", record.Joints.Any(joint => joint.Kind == JointKind.Contact));
        Count("moves", record.Operations.Any(operation => !operation.Moves.IsEmpty));
        Count("milestones", record.Milestones.Count > 0);
        foreach (var part in record.Parts)
        {
            var steps = truth.To([part.Id], RouteCost.Steps, FirstTool.NoChange);
            Count($"{steps.Reachability}", true);
            Count("only with damage", steps is { Reachability: Reachability.Unreachable, Best: not null });
            if (steps is not { Reachability: Reachability.Reachable, Best: { } best }) continue;
            var operations = truth.To([part.Id], RouteCost.Operations, FirstTool.NoChange).Best!;
            Count("steps are a range", best.Cost != steps.Least!.Cost);
            Count("not fully timed", best.Sequence.Operations.Any(each => Timing.Of(record.Operations[each]) is null));
            Count("5 operations or more", best.Sequence.Length > 4);
            Count("decided by the tools in hand", truth.StepsOf(operations.Sequence.Operations, FirstTool.NoChange, UnknownTools.Most) > best.Cost);
            Count("decided by the order of the record", !best.Sequence.Operations.Order().SequenceEqual(best.Sequence.Operations));
        }
    }

    void Count(string what, bool holds)
    {
        if (holds) seen[what] = seen.GetValueOrDefault(what) + 1;
    }
}
