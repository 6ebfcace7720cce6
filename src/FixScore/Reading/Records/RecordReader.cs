using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading.Records;

/// <summary>Reads a whole teardown record. One method for each entry of the format, in files named after its sections.</summary>
static class RecordReader
{
    public static TeardownRecord Read(ObjectReader record)
    {
        record.TextOrNull("$schema");
        record.Matching("format", text => text == TeardownRecord.Format, $"a format known here ({TeardownRecord.Format})");
        return new()
        {
            Id = record.Slug("id"),
            Device = record.Object("device", DeviceReader.Device, required: true) ?? DeviceReader.NoDevice,
            Assessment = record.Object("assessment", DeviceReader.Assessment, required: true) ?? DeviceReader.NoAssessment,
            Parts = record.Entries("parts", PartReader.Part, required: true, least: 1),
            Absent = record.SlugList("absent") is { IsDefault: false } roles ? EntryList.Of(roles) : default,
            Joints = record.Entries("joints", JointReader.Joint),
            Tools = record.Entries("tools", ToolReader.Tool),
            Consumables = record.Entries("consumables", ToolReader.Consumable),
            Operations = record.Entries("operations", OperationReader.Operation),
            Milestones = record.Entries("milestones", OperationReader.Milestone),
            Sequences = record.Entries("sequences", OperationReader.Sequence),
            Swaps = record.Entries("swaps", TrialReader.Swap),
            Locks = record.Entries("locks", TrialReader.Lock),
            Documentation = record.Entries("documentation", SupplyReader.Document),
            Spares = record.Entries("spares", SupplyReader.Spare),
            Support = record.Object("support", SupplyReader.Support),
            Observations = record.Entries("observations", RemarkReader.Observation),
            Findings = record.Entries("findings", RemarkReader.Remark),
            Evidence = record.Entries("evidence", RemarkReader.Evidence),
        };
    }

    /// <summary>What every entry of a list may carry.</summary>
    public static T Entry<T>(this ObjectReader reader, T entry) where T : RecordEntry
    {
        var (note, evidence) = (reader.TextOrNull("note"), reader.Ids("evidence"));
        return note is null && evidence.IsEmpty ? entry : (T)(entry with { Note = note, Evidence = evidence });
    }

    public static EntryList<T> WordList<T>(this ObjectReader reader, string name) where T : struct, Enum =>
        reader.Words<T>(name) is { IsDefault: false } words ? EntryList.Of(words) : default;

    public static EntryList<string> IdList(this ObjectReader reader, string name) =>
        reader.SlugList(name) is { IsDefault: false } ids ? EntryList.Of(ids) : default;

    public static Price Price(ObjectReader price) => new(
        price.Quantity("amount", required: true) ?? default,
        price.Matching("currency", IsCurrency, "a currency code of ISO 4217, such as EUR"),
        price.FlagOrNull("taxIncluded"));

    static bool IsCurrency(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);
}
