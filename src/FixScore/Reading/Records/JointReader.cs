using FixScore.Records;

namespace FixScore.Reading.Records;

static class JointReader
{
    public static Joint Joint(ObjectReader joint) => joint.Entry(new Joint
    {
        Id = joint.Slug("id"),
        Joins = joint.SlugList("joins", required: true, least: 2).OrEmpty(),
        Kind = joint.Word<JointKind>("kind"),
        Count = joint.Quantity("count", whole: true) ?? 1,
        Reuse = joint.OneOf<Reuse>("reuse"),
        Integral = joint.FlagOrNull("integral") ?? false,
        Under = joint.Ids("under"),
        Where = joint.TextOrNull("where"),
        Hidden = joint.FlagOrNull("hidden"),
        Screw = joint.Object("screw", Screw),
        Adhesive = joint.Object("adhesive", Adhesive),
        Connector = joint.Object("connector", Connector),
    });

    static Screw Screw(ObjectReader screw) => new(
        screw.OneOfTexts("drive", required: true),
        screw.Quantity("diameterMm", required: true) ?? default,
        screw.Quantity("lengthMm", required: true) ?? default);

    static Adhesive Adhesive(ObjectReader adhesive) => new()
    {
        Type = adhesive.OneOf<AdhesiveType>("type", required: true),
        PeelNPer25Mm = adhesive.Quantity("peelNPer25Mm"),
        ShearMPa = adhesive.Quantity("shearMPa"),
        WidthMm = adhesive.Quantity("widthMm"),
        AreaMm2 = adhesive.Quantity("areaMm2"),
        SoftensAtC = adhesive.Quantity("softensAtC", negative: true),
    };

    static Connector Connector(ObjectReader connector) => new(connector.OneOf<ConnectorType>("type", required: true));
}
