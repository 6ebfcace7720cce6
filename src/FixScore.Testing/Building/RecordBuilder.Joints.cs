using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

public sealed partial class RecordBuilder
{
    /// <summary>Adds a joint of any kind.</summary>
    /// <param name="id">Its id, a slug.</param>
    /// <param name="joins">Ids of the parts it holds.</param>
    /// <param name="kind">How it holds.</param>
    /// <param name="configure">Changes the joint.</param>
    public RecordBuilder Joint(string id, ImmutableArray<string> joins, JointKind kind, Func<Joint, Joint>? configure = null)
    {
        var joint = Changed(new Joint { Id = id, Joins = joins, Kind = kind }, configure);
        return With(record => record with { Joints = Plus(record.Joints, joint) });
    }

    /// <summary>Adds screws that are alike.</summary>
    /// <param name="id">Id of the joint, a slug.</param>
    /// <param name="joins">Ids of the parts they hold.</param>
    /// <param name="drive">The drive, a slug; <c>default</c> when not observed.</param>
    /// <param name="diameter">Nominal diameter in millimetres.</param>
    /// <param name="length">Length in millimetres.</param>
    /// <param name="count">How many.</param>
    /// <param name="configure">Changes the joint.</param>
    public RecordBuilder Screw(
        string id, ImmutableArray<string> joins, OneOf<string> drive, Quantity diameter, Quantity length, int count = 1,
        Func<Joint, Joint>? configure = null) =>
        Joint(id, joins, JointKind.Screw, joint =>
            Changed(joint with { Count = count, Screw = new(drive, diameter, length) }, configure));

    /// <summary>Adds an adhesive bond.</summary>
    /// <param name="id">Id of the joint, a slug.</param>
    /// <param name="joins">Ids of the parts it holds.</param>
    /// <param name="adhesive">What it is made of; unknown when left out.</param>
    /// <param name="configure">Changes the joint.</param>
    public RecordBuilder Bond(
        string id, ImmutableArray<string> joins, OneOf<AdhesiveType> adhesive = default, Func<Joint, Joint>? configure = null) =>
        Joint(id, joins, JointKind.Adhesive, joint => Changed(joint with { Adhesive = new() { Type = adhesive } }, configure));

    /// <summary>Adds an electrical connection.</summary>
    /// <param name="id">Id of the joint, a slug.</param>
    /// <param name="joins">Ids of the parts it connects.</param>
    /// <param name="type">How it connects; unknown when left out.</param>
    /// <param name="configure">Changes the joint.</param>
    public RecordBuilder Plug(
        string id, ImmutableArray<string> joins, OneOf<ConnectorType> type = default, Func<Joint, Joint>? configure = null) =>
        Joint(id, joins, JointKind.Connector, joint => Changed(joint with { Connector = new(type) }, configure));
}
