using FixScore.Records;

namespace FixScore.Reading.Records;

static class ToolReader
{
    public static Tool Tool(ObjectReader tool) => tool.Entry(new Tool
    {
        Id = tool.Slug("id"),
        Name = tool.Text("name"),
        Class = tool.OneOf<ToolClass>("class", required: true),
        SuppliedWith = tool.Ids("suppliedWith"),
        HeatC = tool.Quantity("heatC", negative: true),
        Solvent = tool.TextOrNull("solvent"),
    });

    public static Consumable Consumable(ObjectReader consumable) => consumable.Entry(new Consumable
    {
        Id = consumable.Slug("id"),
        Name = consumable.Text("name"),
        Kind = consumable.TextOrNull("kind"),
        Price = consumable.Object("price", RecordReader.Price),
    });
}
