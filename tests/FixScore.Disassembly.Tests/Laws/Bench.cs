using FixScore.Disassembly.Tests.Generated;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Laws;

/// <summary>Records of middling size for laws about two records: too large to try everything, so the one is held against the other.</summary>
static class Bench
{
    static readonly RouteCost[] Costs = Enum.GetValues<RouteCost>();

    public static IEnumerable<(TeardownRecord Record, Random Random)> Records(int count, int firstSeed) =>
        Enumerable.Range(firstSeed, count).Select(seed => (RandomRecords.Of(seed, mostParts: 9, mostOperations: 16), new Random(seed)));

    /// <summary>The routes to every part of one record beside those of another with the same parts.</summary>
    public static IEnumerable<(Route One, Route Other)> Beside(this TeardownRecord record, TeardownRecord other)
    {
        var (source, changed) = (new RecordCase(record), new RecordCase(other));
        return from part in record.Parts from cost in Costs select (source.RouteTo(part.Id, cost), changed.RouteTo(part.Id, cost));
    }

    /// <summary>Whether a route costs no more than another, least and most.</summary>
    public static bool IsNoLongerThan(this Route route, Route other) =>
        route.Reachability == Reachability.Reachable && route.Query.Cost switch
        {
            RouteCost.Steps => route.Steps!.Value.Low <= other.Steps!.Value.Low && route.Steps.Value.High <= other.Steps.Value.High,
            RouteCost.Operations => route.Operations <= other.Operations,
            _ when other.Seconds is { } seconds => route.Seconds is { } own && own.Low + own.High <= seconds.Low + seconds.High,
            _ => route.Seconds is not null || route.Operations <= other.Operations,
        };

    public static T Pick<T>(this Random random, IReadOnlyList<T> from) => from[random.Next(from.Count)];

    public static T[] Shuffled<T>(this Random random, IEnumerable<T> from)
    {
        T[] all = [.. from];
        random.Shuffle(all);
        return all;
    }
}
