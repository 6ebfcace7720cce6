using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class ToolWriter
{
    public static void Tool(Utf8JsonWriter json, Tool tool)
    {
        json.Required("id", tool.Id);
        json.Required("name", tool.Name);
        json.AnyOf("class", tool.Class);
        json.Ids("suppliedWith", tool.SuppliedWith);
        json.Quantity("heatC", tool.HeatC);
        json.Text("solvent", tool.Solvent);
        json.Remarks(tool);
    }

    public static void Consumable(Utf8JsonWriter json, Consumable consumable)
    {
        json.Required("id", consumable.Id);
        json.Required("name", consumable.Name);
        json.Text("kind", consumable.Kind);
        json.Object("price", consumable.Price, RecordWriter.Price);
        json.Remarks(consumable);
    }
}
