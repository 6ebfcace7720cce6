using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>A score that can be made again with other values of its leaves. Not thread safe: the rows change.</summary>
sealed class ScoreTree
{
    readonly Profile profile;
    readonly Row root;
    readonly Row[] settled;

    public ScoreTree(RecordDocument document, Profile profile, CancellationToken cancellation)
    {
        this.profile = profile;
        root = new Evaluation(profile, new RecordCase(document.Record, cancellation), cancellation).Run();
        // Below first: a row is settled from its children.
        settled = [.. root.SelfAndBelow().Where(row => row.Children.Count > 0).Reverse()];
        Open = [.. root.SelfAndBelow().Where(row => row.Children.Count == 0 && row.State == RowState.Counts && !row.Value.IsExact)];
        Ends = [.. Open.Select(row => row.Value)];
        Total = new Result(profile, root);
    }

    /// <summary>Rows without children whose value is not fully known, in the order of the score.</summary>
    public Row[] Open { get; }

    /// <summary>What they can be.</summary>
    public Interval[] Ends { get; }

    /// <summary>The total as it is.</summary>
    public Result Total { get; }

    /// <summary>The total with other values of the open rows.</summary>
    public Result With(ReadOnlySpan<Interval> values)
    {
        for (var i = 0; i < values.Length; i++) Open[i].Value = values[i];
        foreach (var row in settled) Combination.Settle(row);
        if (root.State != RowState.Counts) (root.State, root.Value) = (RowState.Counts, profile.Root.Scale.Whole);
        return new(profile, root);
    }
}
