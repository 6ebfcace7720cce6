using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>The lines directly below the total of a profile that takes their weighted arithmetic mean. Immutable and thread safe.</summary>
/// <param name="Root">The node of the total.</param>
/// <param name="Nodes">The lines that count, in the order of the profile.</param>
sealed record ProfileLines(GroupNode Root, ImmutableArray<ProfileNode> Nodes)
{
    public IEnumerable<string> Ids => Nodes.Select(node => node.Id);

    public IEnumerable<decimal> Weights => Nodes.Select(node => node.Weight!.Value);

    /// <summary>The lines; <c>null</c> where the total is something else, or of fewer than two lines.</summary>
    public static ProfileLines? Of(Profile profile)
    {
        if (profile.Root is not GroupNode { Aggregate: Aggregate.WeightedArithmetic, Over: null } root) return null;
        ImmutableArray<ProfileNode> nodes = [.. root.Of.Where(node => !node.GateOnly && node.Weight > 0m)];
        return nodes.Length < 2 ? null : new(root, nodes);
    }

    /// <summary>Number of the line of an id; below 0 where there is none.</summary>
    public int IndexOf(string id) => Nodes.Select(node => node.Id).ToImmutableArray().IndexOf(id);

    /// <summary>Number of the line that a node stands in; below 0 where it is in none.</summary>
    public int Holding(string node) => Nodes.Select(line => line.SelfAndBelow().Any(below => below.Id == node)).ToImmutableArray().IndexOf(true);

    /// <summary>Share of the way from the worst of a scale to its best.</summary>
    public static decimal Share(decimal points, Scale scale) => (((Rational)points - scale.Min) / ((Rational)scale.Max - scale.Min)).ToDecimal();
}
