using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class RemarkWriter
{
    public static void Observation(Utf8JsonWriter json, Observation observation)
    {
        json.Required("name", observation.Name);
        json.Flag("value", observation.Flag);
        json.Text("value", observation.Word);
        json.Quantity("value", observation.Number);
        json.Text("unit", observation.Unit);
        json.Ids("parts", observation.Parts);
        json.Remarks(observation);
    }

    public static void Remark(Utf8JsonWriter json, Remark finding)
    {
        json.Required("topic", finding.Topic);
        json.Required("text", finding.Text);
        json.Ids("about", finding.About);
        json.Remarks(finding);
    }

    public static void Evidence(Utf8JsonWriter json, EvidenceItem evidence)
    {
        json.Required("id", evidence.Id);
        json.Word<EvidenceKind>("kind", evidence.Kind);
        json.Required("ref", evidence.Ref);
        json.Text("sha256", evidence.Sha256);
        json.Date("retrieved", evidence.Retrieved);
        json.Remarks(evidence);
    }
}
