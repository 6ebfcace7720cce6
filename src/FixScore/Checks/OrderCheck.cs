using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Operations and milestones that wait for themselves: a cycle in which each certainly needs the next.</summary>
static class OrderCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record)
    {
        var needs = new Needs(record);
        var steps = record.Record.Operations.Select(operation => KeyValuePair.Create(operation.Id, needs.Of(operation)))
            .Concat(record.Record.Milestones.Select(milestone => KeyValuePair.Create(milestone.Id, needs.Of(milestone))));
        return Cycles.Of(steps).Select(cycle => Waits(record, cycle));
    }

    static Problem Waits(CheckedRecord record, string[] cycle) => Problem.Of(
        Severity.Error, record.At(record.Find<NamedEntry>(cycle[0])!), "waits-for-itself",
        "{cycle}: this can never begin.", "Break the circle; one of them can be done first.",
        ("cycle", string.Join(" needs ", [.. Shown(cycle), cycle[0]])));

    static IEnumerable<string> Shown(string[] cycle) => cycle.Length <= 12 ? cycle : [.. cycle[..11], "..."];
}
