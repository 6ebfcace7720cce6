using System.Text.Json;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Writing;

static class JointWriter
{
    public static void Joint(Utf8JsonWriter json, Joint joint)
    {
        json.Required("id", joint.Id);
        json.Texts("joins", joint.Joins.OrEmpty());
        json.Word<JointKind>("kind", joint.Kind);
        json.Quantity("count", joint.Count == 1 ? null : joint.Count);
        json.OneOf("reuse", joint.Reuse);
        json.Flag("integral", joint.Integral ? true : null);
        json.Ids("under", joint.Under);
        json.Text("where", joint.Where);
        json.Flag("hidden", joint.Hidden);
        json.Object("screw", joint.Screw, Screw);
        json.Object("adhesive", joint.Adhesive, Adhesive);
        json.Object("connector", joint.Connector, Connector);
        json.Remarks(joint);
    }

    static void Screw(Utf8JsonWriter json, Screw screw)
    {
        json.OneOf("drive", screw.Drive);
        json.Quantity("diameterMm", screw.DiameterMm);
        json.Quantity("lengthMm", screw.LengthMm);
    }

    static void Adhesive(Utf8JsonWriter json, Adhesive adhesive)
    {
        json.AnyOf("type", adhesive.Type);
        json.Quantity("peelNPer25Mm", adhesive.PeelNPer25Mm);
        json.Quantity("shearMPa", adhesive.ShearMPa);
        json.Quantity("widthMm", adhesive.WidthMm);
        json.Quantity("areaMm2", adhesive.AreaMm2);
        json.Quantity("softensAtC", adhesive.SoftensAtC);
    }

    static void Connector(Utf8JsonWriter json, Connector connector) => json.AnyOf("type", connector.Type);
}
