using System.Collections.Immutable;

namespace FixScore.Disassembly.Model;

/// <summary>Needs laid out so that each is looked at once: what a need is made of stands before it.</summary>
sealed class NeedTable
{
    readonly Dictionary<Need, int> index = new(ReferenceEqualityComparer.Instance);
    readonly List<NeedRow> rows = [];

    public NeedTable(IEnumerable<Need> roots)
    {
        foreach (var root in roots) Add(root);
    }

    public IReadOnlyList<NeedRow> Rows => rows;

    public int this[Need need] => index[need];

    public int? Find(Need need) => index.TryGetValue(need, out var row) ? row : null;

    /// <summary>Which needs hold when these operations were done.</summary>
    public bool[] Holding(Bits done)
    {
        var holds = new bool[rows.Count];
        for (var i = 0; i < holds.Length; i++)
            holds[i] = rows[i].Fact is { } fact ? Array.Exists(fact.By, done.Has)
                : rows[i].IsAll ? Array.TrueForAll(rows[i].Of, each => holds[each]) : Array.Exists(rows[i].Of, each => holds[each]);
        return holds;
    }

    // Depth first with a stack of its own: a record may nest conditions as deep as a document can go.
    void Add(Need root)
    {
        var open = new Stack<Need>([root]);
        while (open.TryPeek(out var next))
        {
            var waiting = Parts(next).Where(part => !index.ContainsKey(part)).ToArray();
            if (waiting.Length == 0 || index.ContainsKey(next)) Place(open.Pop());
            else foreach (var part in waiting) open.Push(part);
        }
    }

    void Place(Need need)
    {
        if (!index.TryAdd(need, rows.Count)) return;
        rows.Add(new(need as Need.Fact, need is Need.All, [.. Parts(need).Select(part => index[part])]));
    }

    static ImmutableArray<Need> Parts(Need need) => need switch
    {
        Need.All all => all.Of,
        Need.Any any => any.Of,
        _ => [],
    };
}

/// <summary>One need of a table.</summary>
/// <param name="Fact">The fact, when it is one.</param>
/// <param name="IsAll">Whether all of <paramref name="Of"/> must hold; else one.</param>
/// <param name="Of">What it is made of, by row; empty for a fact.</param>
sealed record NeedRow(Need.Fact? Fact, bool IsAll, int[] Of);
