using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class ToolWriter
{
    public static void Tool(Utf8JsonWriter json, Tool tool)
    {
        json.WriteString("id", tool.Id);
        json.WriteString("name", tool.Name);
        json.OneOf("class", tool.Class);
        json.Ids("suppliedWith", tool.SuppliedWith);
        json.Quantity("heatC", tool.HeatC);
        json.Text("solvent", tool.Solvent);
        json.Remarks(tool);
    }

    public static void Consumable(Utf8JsonWriter json, Consumable consumable)
    {
        json.WriteString("id", consumable.Id);
        json.WriteString("name", consumable.Name);
        json.Text("kind", consumable.Kind);
        json.Object("price", consumable.Price, RecordWriter.Price);
        json.Remarks(consumable);
    }
}
