using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Modularity;

/// <summary>How a part connects electrically; the words of option <c>connection</c>.</summary>
enum ConnectionKind
{
    None,
    Contact,
    Connector,
    Solder,
}

/// <summary>A joint that connects a part electrically to parts that stay.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Possible">What it can be; several when its connector type is open.</param>
sealed record Connection(Joint Joint, ImmutableArray<ConnectionKind> Possible)
{
    public static IEnumerable<Connection> Of(IEnumerable<Joint> joints) =>
        from joint in joints
        let possible = KindsOf(joint)
        where !possible.IsEmpty
        select new Connection(joint, possible);

    static ImmutableArray<ConnectionKind> KindsOf(Joint joint) => joint.Kind switch
    {
        JointKind.Contact => [ConnectionKind.Contact],
        JointKind.Connector => [.. (joint.Connector?.Type ?? default).Possible().Select(KindOf).Distinct().Order()],
        JointKind.Solder or JointKind.Weld => [ConnectionKind.Solder],
        _ => [],
    };

    static ConnectionKind KindOf(ConnectorType type) => type switch
    {
        ConnectorType.SolderedWire => ConnectionKind.Solder,
        ConnectorType.SpringContact => ConnectionKind.Contact,
        _ => ConnectionKind.Connector,
    };
}
