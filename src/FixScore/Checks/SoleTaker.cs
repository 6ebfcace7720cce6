using FixScore.Records;

namespace FixScore.Checks;

/// <summary>The operation that takes a part, where there is just one. Taking a part takes its group and what rides on any of them.</summary>
sealed class SoleTaker
{
    readonly CheckedRecord record;
    readonly ILookup<string, string> riders;
    readonly Dictionary<string, string[]> takers = new(StringComparer.Ordinal);

    /// <summary>Spreads what is taken over what comes along.</summary>
    /// <param name="record">The record.</param>
    /// <param name="taken">Parts and the operations that take them.</param>
    public SoleTaker(CheckedRecord record, IEnumerable<(string Part, string Operation)> taken)
    {
        this.record = record;
        riders = record.Record.Parts
            .Where(part => part.On is not null && IsPart(part.On) && IsPart(part.Id))
            .ToLookup(part => record.GroupOf(part.On!), part => record.GroupOf(part.Id), StringComparer.Ordinal);
        foreach (var (part, operation) in taken.Where(each => IsPart(each.Part))) Spread(record.GroupOf(part), operation);
    }

    /// <summary>The one operation that takes the part; nothing where there is none or another would do as well.</summary>
    public string[] Of(string part) => IsPart(part) && takers.GetValueOrDefault(record.GroupOf(part)) is [_] only ? only : [];

    // Two takers are as good as many, so that each group is come to at most twice.
    void Spread(string group, string operation)
    {
        var open = new Stack<string>([group]);
        while (open.TryPop(out var next))
        {
            var known = takers.GetValueOrDefault(next) ?? [];
            if (known.Length == 2 || known.Contains(operation)) continue;
            takers[next] = [.. known, operation];
            foreach (var rider in riders[next]) open.Push(rider);
        }
    }

    bool IsPart(string id) => record.Find<Part>(id) is not null;
}
