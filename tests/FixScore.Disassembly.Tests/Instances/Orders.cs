using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>All orders in which operations can be done, one by one, and what they cost.</summary>
static class Orders
{
    /// <summary>Orders that end with one operation, or with all done when none is named; ids joined by a hyphen.</summary>
    public static IEnumerable<string> Of(TeardownRecord record, string? last = null)
    {
        var simulator = new Simulator(record);
        return From(State.Start, []).Select(order => string.Join('-', order));

        IEnumerable<string[]> From(State state, string[] done)
        {
            if (last is null ? done.Length == simulator.Operations.Length : done.Contains(last)) return [done];
            return Enumerable.Range(0, simulator.Operations.Length).Where(each => simulator.CanBeDone(state, each))
                .SelectMany(each => From(simulator.After(state, each), [.. done, simulator.Operations[each].Id]));
        }
    }

    /// <summary>Times of an order, with a penalty for each change of tool.</summary>
    public static decimal Cost(TeardownRecord record, string order, int penalty)
    {
        var operations = order.Split('-').Select(id => record.Operations.First(operation => operation.Id == id)).ToArray();
        return operations.Sum(operation => operation.Seconds!.Value.Min!.Value) + penalty * Changes(operations);
    }

    /// <summary>Changes of tool in an order.</summary>
    public static int Changes(TeardownRecord record, string order) =>
        Changes([.. order.Split('-').Select(id => record.Operations.First(operation => operation.Id == id))]);

    static int Changes(Operation[] operations) => operations.Zip(operations.Skip(1)).Count(pair => pair.First.Tools[0] != pair.Second.Tools[0]);

    /// <summary>The route of a way as an order.</summary>
    public static string Order(this Way way) => string.Join('-', way.Operations);

}
