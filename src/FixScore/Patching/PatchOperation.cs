using System.Text.Json;
using System.Text.Json.Nodes;

namespace FixScore.Patching;

/// <summary>One operation of a patch (RFC 6902 section 4).</summary>
/// <param name="Op">Its name.</param>
/// <param name="Path">Where.</param>
/// <param name="From">Where from, for move and copy.</param>
/// <param name="Value">The value, for add, replace and test.</param>
sealed record PatchOperation(string Op, PatchPath Path, PatchPath? From, JsonNode? Value)
{
    public IEnumerable<PatchedPlace> Places => From is null ? [Place(Path, Op)] : [Place(From, Op == "move" ? "remove" : "test"), Place(Path, "add")];

    public static PatchOperation Read(JsonElement operation)
    {
        if (operation.ValueKind != JsonValueKind.Object) throw new JsonPatchException("An operation is an object.");
        var op = Text(operation, "op");
        return op switch
        {
            "add" or "replace" or "test" => new(op, PatchPath.Parse(Text(operation, "path")), null, ValueOf(operation)),
            "remove" => new(op, PatchPath.Parse(Text(operation, "path")), null, null),
            "move" or "copy" => new(op, PatchPath.Parse(Text(operation, "path")), PatchPath.Parse(Text(operation, "from")), null),
            _ => throw new JsonPatchException($"There is no operation '{op}'."),
        };
    }

    public JsonNode? Apply(JsonNode? document) => Op switch
    {
        "add" => Path.Add(document, Value?.DeepClone()),
        "remove" => Path.Remove(document),
        "replace" => Path.Replace(document, Value?.DeepClone()),
        "move" => Move(document),
        "copy" => Path.Add(document, From!.Find(document)?.DeepClone()),
        _ => Test(document),
    };

    JsonNode? Move(JsonNode? document)
    {
        if (From!.Steps.Length < Path.Steps.Length && Path.Steps.AsSpan(0, From.Steps.Length).SequenceEqual(From.Steps.AsSpan()))
            throw new JsonPatchException($"'{From}' cannot be moved into itself.");
        var moved = From.Find(document)?.DeepClone();
        return Path.Add(From.Remove(document), moved);
    }

    JsonNode? Test(JsonNode? document) =>
        JsonNode.DeepEquals(Path.Find(document), Value) ? document : throw new JsonPatchException($"What stands at '{Path}' is not what the patch expects.");

    static PatchedPlace Place(PatchPath path, string op) =>
        new(new(path.ToString()), op is "add" or "remove" && path.Steps is [.., var last] && last.Length > 0 && last.All(char.IsAsciiDigit));

    static string Text(JsonElement operation, string member) =>
        operation.TryGetProperty(member, out var text) && text.ValueKind == JsonValueKind.String
            ? text.GetString()!
            : throw new JsonPatchException($"An operation lacks '{member}'.");

    static JsonNode? ValueOf(JsonElement operation) =>
        operation.TryGetProperty("value", out var value) ? JsonNode.Parse(value.GetRawText()) : throw new JsonPatchException("An operation lacks 'value'.");
}
