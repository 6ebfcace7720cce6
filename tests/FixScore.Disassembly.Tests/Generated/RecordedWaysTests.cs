using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Ways that were published or filmed are costed with the tools that make fewest steps of them, and are never shorter than the route.</summary>
public sealed class RecordedWaysTests
{
    [Fact]
    public void A_recorded_way_costs_what_its_operations_cost_in_turn()
    {
        for (var seed = 200_000; seed < 201_500; seed++) Shrinking.FailOn(RandomRecords.Of(seed), Differences);
    }

    static IEnumerable<string> Differences(TeardownRecord record)
    {
        var truth = new Truth(record);
        foreach (var part in record.Parts.Select(part => part.Id))
        {
            if (truth.To([part], RouteCost.Seconds, FirstTool.NoChange) is not { Reachability: Reachability.Reachable, Best.Sequence: { Length: > 0 } sequence }) continue;
            Records.Sequence filmed = new()
            {
                Id = "filmed", Part = part, By = SequenceAuthor.Assessor, Operations = [.. sequence.Operations.Select(i => record.Operations[i].Id)],
            };
            var steps = new Interval(Steps(UnknownTools.Least), Steps(UnknownTools.Most));
            var route = new RecordCase(record with { Sequences = [filmed] }).RouteTo(part);
            if (route.Recorded is not [var recorded]) yield return $"{part}: the way {string.Join(' ', filmed.Operations)} is missing";
            else if (!recorded.Way.Operations.SequenceEqual(filmed.Operations)) yield return $"{part}: another way is shown";
            else if (recorded.Way.Steps != steps) yield return $"{part}: {recorded.Way.Steps}, expected {steps}";
            else if (route.Steps!.Value.Low > steps.Low || route.Steps.Value.High > steps.High) yield return $"{part}: the route is longer";

            decimal Steps(UnknownTools unknown) => truth.StepsOf(sequence.Operations, FirstTool.NoChange, unknown);
        }
    }
}
