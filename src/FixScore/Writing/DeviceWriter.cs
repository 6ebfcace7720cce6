using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class DeviceWriter
{
    public static void Device(Utf8JsonWriter json, Device device)
    {
        json.Required("maker", device.Maker);
        json.Required("model", device.Model);
        json.Text("modelCode", device.ModelCode);
        json.Required("kind", device.Kind);
        json.Flag("foldable", device.Foldable ? true : null);
        json.Date("released", device.Released);
        json.Text("ingressProtection", device.IngressProtection);
        json.Object("price", device.Price, RecordWriter.Price);
    }

    public static void Assessment(Utf8JsonWriter json, Assessment assessment)
    {
        json.Required("assessor", assessment.Assessor);
        json.Date("date", assessment.Date);
        json.Entries("units", assessment.Units, Unit);
    }

    static void Unit(Utf8JsonWriter json, AssessedUnit unit)
    {
        json.Required("id", unit.Id);
        json.Text("modelCode", unit.ModelCode);
        json.Text("software", unit.Software);
        json.OneOf("source", unit.Source);
        json.Remarks(unit);
    }
}
