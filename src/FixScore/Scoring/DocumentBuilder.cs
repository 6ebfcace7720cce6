using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Makes the score document of an evaluation.</summary>
sealed class DocumentBuilder(RecordDocument record, Profile profile, ScoringMode mode, Result result)
{
    public static readonly string Kernel = CatalogueBuilder.VersionOf(typeof(DocumentBuilder).Assembly);

    readonly Shares shares = new(result.Root);
    readonly Headroom headroom = new(result.Root, result.Gates);

    public ScoreDocument Build(ImmutableArray<ScoreFault> faults, ImmutableArray<ScoreReading> readings) => new()
    {
        Record = new(record.Record.Id, record.Digest),
        Profile = new(profile.Id, profile.Version, profile.Digest),
        Bases = profile.Bases,
        Plugins = PluginsOf(profile),
        KernelVersion = Kernel,
        Mode = mode,
        Coverage = shares.Coverage,
        Total = result.Total,
        Shown = result.Shown,
        Class = result.Class,
        BeforeGates = result.Root.Value,
        Nodes = [.. result.Root.SelfAndBelow().Select(Node)],
        Faults = faults,
        Gates = result.Closed,
        Readings = readings,
        Notes = profile.Notices,
    };

    ScoreNode Node(Row row)
    {
        var share = shares[row];
        return new()
        {
            Id = row.Node.Id,
            Path = row.Path,
            Title = row.Title,
            Weight = row.Weight,
            Share = share.OfTotal.ToDecimal(),
            Value = row.Value,
            Shown = result.Show(row.Value),
            Contribution = share.Contribution,
            Headroom = headroom.Of(row),
            Criterion = row.Node is LeafNode leaf ? CriterionOf(leaf) : null,
            Options = row.Options,
            Reasons = row.Reasons,
            Missing = row.Missing,
        };
    }

    static CriterionReference CriterionOf(LeafNode leaf) => new(leaf.Criterion.Item.Info.Id, leaf.Criterion.Item.Info.RuleVersion);

    static ImmutableArray<PluginIdentity> PluginsOf(Profile profile) =>
        [.. profile.Nodes.OfType<LeafNode>().Select(leaf => leaf.Criterion.Plugin).DistinctBy(plugin => plugin.Id).OrderBy(plugin => plugin.Id, StringComparer.Ordinal)];
}
