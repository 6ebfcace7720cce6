using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Writing;

/// <summary>Writes a whole teardown record. One method for each entry of the format, in files named after its sections, as the reader has them.</summary>
static class RecordWriter
{
    static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        MaxDepth = JsonText.MaxDepth,
    };

    public static void Write(TeardownRecord record, IBufferWriter<byte> output)
    {
        using (var json = new Utf8JsonWriter(output, Layout))
        {
            json.WriteStartObject();
            Record(json, record);
            json.WriteEndObject();
        }
        output.Write("\n"u8);
    }

    static void Record(Utf8JsonWriter json, TeardownRecord record)
    {
        json.Required("format", TeardownRecord.Format);
        json.Required("id", record.Id);
        json.Object("device", record.Device, DeviceWriter.Device);
        json.Object("assessment", record.Assessment, DeviceWriter.Assessment);
        json.Entries("parts", record.Parts, PartWriter.Part);
        json.Ids("absent", record.Absent);
        json.Entries("joints", record.Joints, JointWriter.Joint);
        json.Entries("tools", record.Tools, ToolWriter.Tool);
        json.Entries("consumables", record.Consumables, ToolWriter.Consumable);
        json.Entries("operations", record.Operations, OperationWriter.Operation);
        json.Entries("milestones", record.Milestones, OperationWriter.Milestone);
        json.Entries("sequences", record.Sequences, OperationWriter.Sequence);
        json.Entries("swaps", record.Swaps, TrialWriter.Swap);
        json.Entries("locks", record.Locks, TrialWriter.Lock);
        json.Entries("documentation", record.Documentation, SupplyWriter.Document);
        json.Entries("spares", record.Spares, SupplyWriter.Spare);
        json.Object("support", record.Support, SupplyWriter.Support);
        json.Entries("observations", record.Observations, RemarkWriter.Observation);
        json.Entries("findings", record.Findings, RemarkWriter.Remark);
        json.Entries("evidence", record.Evidence, RemarkWriter.Evidence);
    }

    public static void Price(Utf8JsonWriter json, Price price)
    {
        json.Quantity("amount", price.Amount);
        json.Required("currency", price.Currency);
        json.Flag("taxIncluded", price.TaxIncluded);
    }
}
