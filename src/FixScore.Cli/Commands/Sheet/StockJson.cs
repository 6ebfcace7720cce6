using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Cli.Commands.Sheet;

/// <summary>What to have ready, as JSON.</summary>
static class StockJson
{
    public static void Members(Utf8JsonWriter json, SheetStock stock)
    {
        json.Each("tools", stock.Tools, Tool);
        json.WriteBoolean("toolsRecorded", stock.ToolsAreRecorded);
        json.Each("bits", stock.Bits, Bit);
        json.Each("consumables", stock.Consumables, Use);
        json.Words("forReassembly", [.. stock.ForReassembly.Select(consumable => consumable.Id)]);
        json.Each("renew", stock.Renew, Renewal);
        json.Each("waits", stock.Waits, Wait);
    }

    /// <summary>A joint with the levels that it can have; <c>recorded</c> says whether its reuse was observed.</summary>
    public static void Renewal(Utf8JsonWriter json, SheetRenewal renewal)
    {
        json.WriteString("joint", renewal.Joint.Id);
        json.WriteBoolean("recorded", renewal.IsRecorded);
        json.Words("levels", [.. renewal.Levels.Select(Word.Of)]);
    }

    static void Tool(Utf8JsonWriter json, Tool tool)
    {
        json.WriteString("tool", tool.Id);
        json.WriteString("name", tool.Name);
        json.Words("class", [.. tool.Class.Stated.Select(Word.Of)]);
    }

    static void Bit(Utf8JsonWriter json, SheetBit bit)
    {
        json.Words("drive", bit.Drive.Stated);
        json.Size("diameterMm", bit.DiameterMm);
        json.Words("joints", bit.Joints);
    }

    static void Use(Utf8JsonWriter json, SheetUse use)
    {
        json.WriteString("consumable", use.Consumable.Id);
        json.WriteNumber("count", use.Count);
    }

    static void Wait(Utf8JsonWriter json, SheetOperation each)
    {
        json.WriteNumber("operation", each.Number);
        json.Size("seconds", each.Stop.Operation.WaitSeconds);
    }
}
