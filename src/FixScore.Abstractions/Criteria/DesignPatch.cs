using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace FixScore;

/// <summary>A patch of a record in the making (RFC 6902), for <see cref="DesignChange"/>. Immutable and thread safe.</summary>
/// <remarks>
/// Members are set whether the record states them or not, and entries are only added at the end: so patches that touch
/// different places can be combined, and each applies to the record as its author wrote it.
/// </remarks>
public sealed class DesignPatch
{
    readonly ImmutableArray<string> operations;

    DesignPatch(ImmutableArray<string> operations) => this.operations = operations;

    /// <summary>A patch that changes nothing.</summary>
    public static DesignPatch Empty { get; } = new([]);

    /// <summary>Whether it changes nothing.</summary>
    public bool IsEmpty => operations.IsEmpty;

    /// <summary>Sets a member of an object; what it held is gone.</summary>
    /// <param name="entry">The object.</param>
    /// <param name="member">Name of the member.</param>
    /// <param name="value">The value; text, number, flag, or a list or object of these.</param>
    public DesignPatch Set(Pointer entry, string member, JsonNode value) => With("add", entry.Child(member), value);

    /// <summary>Adds an entry at the end of a list that the record has.</summary>
    /// <param name="list">The list.</param>
    /// <param name="entry">The entry.</param>
    public DesignPatch Append(Pointer list, JsonObject entry) => With("add", list.Child("-"), entry);

    /// <summary>Takes a member away that the record states.</summary>
    /// <param name="entry">The object.</param>
    /// <param name="member">Name of the member.</param>
    public DesignPatch Remove(Pointer entry, string member) => With("remove", entry.Child(member), null);

    /// <summary>The patch followed by another.</summary>
    /// <param name="more">What comes after it.</param>
    public DesignPatch Then(DesignPatch more) => new([.. operations, .. more.operations]);

    /// <summary>A list of texts, as a value.</summary>
    /// <param name="words">The texts.</param>
    public static JsonArray Words(params IEnumerable<string> words) => new([.. words.Select(word => (JsonNode)word)]);

    /// <summary>The change that this patch makes.</summary>
    /// <param name="id">Names the change among those of its criterion, a slug.</param>
    /// <param name="why">What changes and why it should help.</param>
    public DesignChange As(string id, Reason why) => new(id, why, ToString());

    /// <summary>The patch as JSON text.</summary>
    public override string ToString() => $"[{string.Join(',', operations)}]";

    DesignPatch With(string action, Pointer path, JsonNode? value)
    {
        var operation = new JsonObject { ["op"] = action, ["path"] = path.Text };
        if (value is not null) operation["value"] = value;
        return new(operations.Add(operation.ToJsonString()));
    }
}
