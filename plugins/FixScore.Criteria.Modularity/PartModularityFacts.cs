using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Modularity;

/// <summary>What is replaced together with a part, and how the part connects.</summary>
/// <param name="Together">What is replaced together.</param>
/// <param name="Connections">Electrical connections of the group, with what rides on it, to other parts.</param>
/// <param name="IsDescribed">Whether the record says at all how the part is held and connected.</param>
sealed record PartModularityFacts(ReplacedTogether Together, ImmutableArray<Connection> Connections, bool IsDescribed)
{
    public static PartModularityFacts Of(TeardownCase source, Part part, bool bundles)
    {
        var assembly = source.Derive<PartAssembly, string>(part.Id);
        return new(
            ReplacedTogether.Of(source, part, bundles),
            [.. Connection.Of(assembly.Joints)],
            assembly.IsDescribed);
    }
}
