using System.Text;
using System.Text.RegularExpressions;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Laws;

/// <summary>Changes to a record that cannot change a way.</summary>
public sealed partial class SameTests
{
    [Fact]
    public void Other_ids_in_the_same_places_change_nothing_but_names()
    {
        var compared = 0;
        foreach (var (record, _) in Bench.Records(250, 50_000))
        {
            var text = Encoding.UTF8.GetString(RecordFile.ToJson(record));
            if (RecordFile.Read(Encoding.UTF8.GetBytes(Ids().Replace(text, Renamed))) is not { Value: { } renamed }) continue;
            var (source, other) = (new RecordCase(record), new RecordCase(renamed.Record));
            foreach (var (part, cost) in record.Parts.SelectMany(_ => Enum.GetValues<RouteCost>(), (part, cost) => (part.Id, cost)))
            {
                var after = other.RouteTo(Renamed(part), cost);
                AssertSame(source.RouteTo(part, cost), after, id => id is null ? null : Renamed(id));
                compared++;
            }
        }
        Assert.True(compared > 2_000);
    }

    [Fact]
    public void Other_places_of_parts_joints_tools_and_milestones_change_nothing()
    {
        foreach (var (record, random) in Bench.Records(250, 60_000))
        {
            var shuffled = record with
            {
                Parts = [.. random.Shuffled(record.Parts)],
                Joints = [.. random.Shuffled(record.Joints)],
                Tools = [.. random.Shuffled(record.Tools)],
                Milestones = [.. random.Shuffled(record.Milestones)],
            };
            foreach (var (before, after) in record.Beside(shuffled)) AssertSame(before, after, id => id);
        }
    }

    [Fact]
    public void Other_places_of_operations_change_which_of_equal_ways_is_shown_but_no_cost()
    {
        foreach (var (record, random) in Bench.Records(250, 70_000))
            foreach (var (before, after) in record.Beside(record with { Operations = [.. random.Shuffled(record.Operations)] }))
            {
                Assert.Equal(before.Reachability, after.Reachability);
                Assert.Equal(before.LowerBound, after.LowerBound);
                if (before.Reachability != Reachability.Reachable) continue;
                Assert.True(before.IsNoLongerThan(after) && after.IsNoLongerThan(before), $"{record.Id} {before.Query.Parts[0]} {before.Query.Cost}");
            }
    }

    [Fact]
    public void A_way_that_harms_another_part_changes_no_way_without_harm()
    {
        foreach (var (record, random) in Bench.Records(250, 80_000))
        {
            Part harmed = random.Pick([.. record.Parts]);
            var rough = new Operation
            {
                Id = "rough", Action = OperationAction.Pry, Tools = [], Seconds = 1, Damages = [harmed.Id], Undoes = [.. record.Joints.Select(joint => joint.Id)],
            };
            var groups = PartGroups.Of(record);
            foreach (var (before, after) in record.Beside(record with { Operations = [rough, .. record.Operations] }))
                if (before.Reachability == Reachability.Reachable && !groups.Of(before.Query.Parts[0]).Holds(harmed.Id)) AssertSame(before, after, id => id);
        }
    }

    // Turns the order of ids around: p0 becomes 9p, p9 becomes 0p.
    static string Renamed(string id) => $"{9 - (id[1] - '0')}{id[0]}{id[2..]}";

    static string Renamed(Match quoted) => $"\"{Renamed(quoted.Value[1..^1])}\"";

    static void AssertSame(Route before, Route after, Func<string?, string?> renamed)
    {
        Assert.Equal((before.Reachability, before.Steps, before.Seconds, before.LowerBound), (after.Reachability, after.Steps, after.Seconds, after.LowerBound));
        foreach (var (one, other) in new[] { (before.Way, after.Way), (before.LeastWay, after.LeastWay) })
            Assert.Equal(one?.Operations.Select(renamed), other?.Operations.Select(id => (string?)id));
    }

    [GeneratedRegex("\"[pjom][0-9]+\"")]
    private static partial Regex Ids();
}
