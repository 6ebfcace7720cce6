using System.Text;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Patching;

/// <summary>Patches teardown records. Thread safe.</summary>
/// <remarks>What comes of it is a what-if: it is read and checked like any record, and says nothing about the device that was taken apart.</remarks>
public static class RecordPatch
{
    /// <summary>A record after patches, one after the other, with all problems that reading it finds.</summary>
    /// <param name="record">The record; patches see it as <see cref="RecordFile.Write"/> writes it.</param>
    /// <param name="patches">JSON Patches (RFC 6902) as text.</param>
    /// <exception cref="JsonPatchException">A patch is malformed or does not apply.</exception>
    public static ReadResult<RecordDocument> Apply(TeardownRecord record, params IEnumerable<string> patches) =>
        Apply(JsonNode.Parse(RecordFile.ToJson(record)), patches);

    /// <summary>The same for a record that was written before.</summary>
    /// <param name="written">The record as <see cref="RecordFile.Write"/> writes it; left as it is.</param>
    /// <param name="patches">JSON Patches (RFC 6902) as text.</param>
    /// <exception cref="JsonPatchException">A patch is malformed or does not apply.</exception>
    public static ReadResult<RecordDocument> Apply(JsonNode? written, IEnumerable<string> patches)
    {
        var changed = patches.Aggregate(written, JsonPatch.Apply);
        return RecordFile.Read(Encoding.UTF8.GetBytes(changed?.ToJsonString() ?? "null"));
    }
}
