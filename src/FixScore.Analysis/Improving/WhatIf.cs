using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Patching;
using FixScore.Records;

namespace FixScore.Analysis.Improving;

/// <summary>Scores a record with sets of changes, and bounds what sets can score. Asks a criterion once for each set of changes that it may notice.</summary>
/// <remarks>Not thread safe: one search owns it.</remarks>
sealed class WhatIf
{
    // A record with its facts is large; what criteria said of it is small and stays.
    const int MostKept = 256;

    // About how many scorings take as long as reading and checking a changed record.
    const int OfReading = 4;

    readonly ImmutableArray<CandidateChange> candidates;
    readonly TeardownRecord record;
    readonly JsonNode? written;
    readonly Profile remembered;
    readonly CancellationToken cancellation;
    readonly Dictionary<UInt128, TeardownCase?> cases = [];
    readonly Queue<UInt128> kept = [];
    int effort;
    int work;
    Request request = new(0, null);

    public WhatIf(TeardownRecord record, Profile profile, ImmutableArray<CandidateChange> candidates, int effort, bool trustsReads, CancellationToken cancellation)
    {
        (this.record, this.candidates, this.effort, this.cancellation) = (record, candidates, effort, cancellation);
        written = JsonNode.Parse(RecordFile.ToJson(record));
        ImmutableArray<Places> places = [.. candidates.Select(Places.Of)];
        Choices = new([.. places.Select((place, i) => Mask(places, j => j != i && places[j].Exclude(place)))]);
        var kernel = Mask(places, j => places[j].MayMatterToKernel);
        var leaves = new List<LeafMemory>();
        remembered = profile with { Readings = [], Root = Remember(profile.Root, leaf =>
        {
            var memory = new LeafMemory(this, leaf, kernel | Mask(places, j => !trustsReads || places[j].MayMatterTo(leaf.Criterion.Item.Info)));
            leaves.Add(memory);
            return memory.AsCriterion;
        }) };
        Kernel = kernel;
        Blocks = Improving.Blocks.Of(candidates.Length, leaves.Select(leaf => leaf.Relevant));
    }

    public Choices Choices { get; }

    /// <summary>Groups of candidates that no criterion may notice together.</summary>
    public ImmutableArray<UInt128> Blocks { get; }

    public ImmutableArray<CandidateChange> Candidates => candidates;

    /// <summary>How many sets were scored.</summary>
    public int Tried { get; private set; }

    public bool IsExhausted => work >= effort;

    /// <summary>Adds half as much effort as there was, for what is done after the search itself.</summary>
    public void Extend() => effort += effort / 2;

    /// <summary>Counts work that was done.</summary>
    internal void Count(int done) => work += done;

    /// <summary>What is to be answered: a set, or, for a bound, how many candidates of each block may be taken.</summary>
    internal Request Now => request;

    UInt128 Kernel { get; }

    /// <summary>The total with a set of changes; <c>null</c> when they do not go together.</summary>
    public ScoreTotal? Score(UInt128 set)
    {
        Tried++;
        return Asked(new(set, null));
    }

    /// <summary>A total that no set with so many candidates of each block exceeds at its low end; <c>null</c> when none can be told.</summary>
    public ScoreTotal? Bound(ImmutableArray<int> ofBlocks) => Kernel == 0 ? Asked(new(0, ofBlocks)) : null;

    /// <summary>The total scored afresh on the whole record, by the profile as it is; <c>null</c> when the changes do not go together.</summary>
    public ScoreTotal? Whole(UInt128 set, Profile profile) =>
        Patched(set) is { } patched ? Scorer.Total(patched.Record, profile, cancellation) : null;

    internal TeardownCase? CaseOf(UInt128 set)
    {
        if (cases.TryGetValue(set, out var known)) return known;
        work += OfReading;
        if (kept.Count == MostKept) cases.Remove(kept.Dequeue());
        kept.Enqueue(set);
        return cases[set] = set == 0 ? new RecordCase(record, cancellation) : Patched(set) is { } patched ? new RecordCase(patched.Record, cancellation) : null;
    }

    internal int BlockOf(UInt128 relevant) => Blocks.IndexOf(Blocks.First(block => (block & relevant) != 0));

    ScoreTotal? Asked(Request asked)
    {
        work++;
        request = asked;
        if (CaseOf(asked.Set & Kernel) is not { } outer) return null;
        var total = Scorer.Total(outer.Record, remembered, cancellation);
        return request.IsAnswered ? total : null;
    }

    RecordDocument? Patched(UInt128 set)
    {
        try
        {
            var read = RecordPatch.Apply(written, Choices.In(set).Select(i => candidates[i].Change.JsonPatch));
            return read.IsValid ? read.Value : null;
        }
        catch (JsonPatchException)
        {
            return null;
        }
    }

    static UInt128 Mask(ImmutableArray<Places> places, Func<int, bool> holds) =>
        Enumerable.Range(0, places.Length).Where(holds).Aggregate(UInt128.Zero, (set, i) => set | Choices.Bit(i));

    static ProfileNode Remember(ProfileNode node, Func<LeafNode, ICriterion> memory) => node is GroupNode group
        ? group with { Of = [.. group.Of.Select(child => Remember(child, memory))] }
        : (LeafNode)node with { Criterion = ((LeafNode)node).Criterion with { Item = memory((LeafNode)node) } };
}

/// <summary>What is asked of the memories of criteria while the kernel adds up.</summary>
/// <param name="set">The changes.</param>
/// <param name="limits">For a bound: how many changes of each block there may be.</param>
sealed class Request(UInt128 set, ImmutableArray<int>? limits)
{
    public UInt128 Set => set;

    public ImmutableArray<int>? Limits => limits;

    /// <summary>Whether every criterion had an answer.</summary>
    public bool IsAnswered { get; set; } = true;
}
