using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>Operations in order, with the tools that make the fewest steps of them. Immutable.</summary>
/// <param name="Stops">The operations in order.</param>
/// <param name="Steps">Steps under the reading asked for; a range when tools are unknown.</param>
public sealed record Way(ImmutableArray<Stop> Stops, Interval Steps)
{
    /// <summary>Seconds, the sum over operations; <c>null</c> when one of them has no time.</summary>
    public Interval? Seconds { get; } = Sum(Stops.Select(stop => OperationTime.Of(stop.Operation)));

    /// <summary>Seconds to put back together what was taken apart; <c>null</c> when one of the operations has no such time.</summary>
    public Interval? ReassemblySeconds { get; } = Sum(Stops.Select(stop => OperationTime.Known(stop.Operation.ReassemblySeconds)));

    /// <summary>The longest wait with hands free, such as for heat, in seconds at most; <c>null</c> when none was observed.</summary>
    public decimal? LongestWait { get; } = Stops.Select(stop => stop.Operation.WaitSeconds?.Max).Max();

    /// <summary>Ids of the operations in order.</summary>
    public ImmutableArray<string> Operations => [.. Stops.Select(stop => stop.Operation.Id)];

    /// <summary>Ids of the tools in the order in which they are first taken up; unknown ones are missing.</summary>
    public ImmutableArray<string> Tools => [.. Stops.SelectMany(stop => stop.Tools.AsArray()).Distinct(StringComparer.Ordinal)];

    /// <summary>Ids of the joints undone, in order; those that are integral are not.</summary>
    public ImmutableArray<string> Joints => [.. Stops.SelectMany(stop => stop.Undone).Distinct(StringComparer.Ordinal)];

    /// <summary>Ids of the consumables used up, in order, one entry for each use.</summary>
    public ImmutableArray<string> Consumes => [.. Stops.SelectMany(stop => stop.Operation.Consumes)];

    static Interval? Sum(IEnumerable<Interval?> times)
    {
        var sum = new Interval(0, 0);
        foreach (var time in times)
        {
            if (time is not { } known) return null;
            sum = new(sum.Low + known.Low, sum.High + known.High);
        }
        return sum;
    }
}

/// <summary>One operation on the way.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Tools">Ids of the tools used, the cheapest of the alternatives; not recorded when unknown.</param>
/// <param name="Steps">Steps it adds; a range when tools are unknown.</param>
/// <param name="Undone">Ids of the joints it undoes, without those that are integral.</param>
/// <param name="Taken">Ids of the parts that leave with it or are moved, with their groups and all that rides on them.</param>
public sealed record Stop(
    Operation Operation, EntryList<string> Tools, Interval Steps, ImmutableArray<string> Undone, ImmutableArray<string> Taken);
