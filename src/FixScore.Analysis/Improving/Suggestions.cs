using System.Collections.Immutable;
using FixScore.Patching;
using FixScore.Records;

namespace FixScore.Analysis.Improving;

/// <summary>What the criteria of a profile suggest for a record.</summary>
/// <param name="Candidates">Changes that apply, each patch once.</param>
/// <param name="Unusable">Ids of those that do not.</param>
/// <param name="Without">Criteria that suggest nothing.</param>
/// <param name="AreAll">Whether none had to be left out for their number; sets of them are bits of one word.</param>
/// <param name="AreRead">Whether each criterion says that it reads what its suggestions change.</param>
sealed record Suggestions(ImmutableArray<CandidateChange> Candidates, ImmutableArray<string> Unusable, ImmutableArray<string> Without, bool AreRead, bool AreAll)
{
    public static Suggestions Of(TeardownRecord record, Profile profile, CancellationToken cancellation)
    {
        var source = new RecordCase(record, cancellation);
        ImmutableArray<CandidateChange> all = [.. Leaves(profile.Root, null).SelectMany(leaf => Of(source, leaf.Leaf, leaf.Over, cancellation))
            .DistinctBy(each => each.Id, StringComparer.Ordinal).DistinctBy(each => each.Change.JsonPatch, StringComparer.Ordinal)];
        var usable = all.ToLookup(each => Applies(record, each.Change.JsonPatch));
        var criteria = profile.Nodes.OfType<LeafNode>().Select(leaf => leaf.Criterion.Item.Info.Id).Distinct(StringComparer.Ordinal);
        var readers = profile.Nodes.OfType<LeafNode>().Select(leaf => leaf.Criterion.Item.Info).DistinctBy(info => info.Id, StringComparer.Ordinal)
            .ToDictionary(info => info.Id, StringComparer.Ordinal);
        return new([.. usable[true].Take(Choices.Most)], [.. usable[false].Select(each => each.Id)],
            [.. criteria.Where(id => !all.Any(each => each.Id.StartsWith(id + "/", StringComparison.Ordinal)))],
            usable[true].All(each => Places.Of(each).MayMatterTo(readers[each.Id.Split('/')[0]])),
            usable[true].Count() <= Choices.Most);
    }

    static IEnumerable<CandidateChange> Of(TeardownCase source, LeafNode leaf, Over? over, CancellationToken cancellation)
    {
        if (leaf.Criterion.Item is not IDesignAdvisor advisor) return [];
        var context = new DeviceContext(source, leaf.Scale, leaf.Options, cancellation)
        {
            Roles = [.. over?.Choices.SelectMany(choice => choice.Set.Roles).Select(role => role.Key).Distinct(StringComparer.Ordinal) ?? []],
        };
        return Asked(leaf, advisor, context).Select(change => new CandidateChange($"{leaf.Criterion.Item.Info.Id}/{change.Id}", change));
    }

    // What a criterion throws is its fault, as when it judges.
    static DesignChange[] Asked(LeafNode leaf, IDesignAdvisor advisor, DeviceContext context)
    {
        try
        {
            return [.. advisor.Suggest(context)];
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            throw new CriterionFaultException(
                [new(leaf.Id, leaf.Criterion.Item.Info.Id, leaf.Criterion.Plugin.Id, "advice-threw", [new("exception", failure.GetType().Name)])]);
        }
    }

    static IEnumerable<(LeafNode Leaf, Over? Over)> Leaves(ProfileNode node, Over? over) => node is GroupNode group
        ? group.Of.SelectMany(child => Leaves(child, group.Over ?? over))
        : [((LeafNode)node, node.Over ?? over)];

    static bool Applies(TeardownRecord record, string patch)
    {
        try
        {
            return RecordPatch.Apply(record, patch).IsValid;
        }
        catch (JsonPatchException)
        {
            return false;
        }
    }
}
