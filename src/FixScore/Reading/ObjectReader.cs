using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading;

/// <summary>Reads the members of one object. Goes on after problems; whoever made it says <see cref="Done"/> at the end.</summary>
/// <remarks>
/// Members are asked for by name. What was not asked for by then is unknown; a placeholder stands in for what is wrong,
/// and the reading as a whole gives no value.
/// </remarks>
sealed partial class ObjectReader
{
    readonly JsonElement element;
    readonly ReadingContext context;
    readonly Place place;
    readonly int firstAsked;
    int found;

    public ObjectReader(JsonElement element, ReadingContext context, Place place)
    {
        (this.element, this.context, this.place) = (element, context, place);
        firstAsked = context.Asked.Count;
    }

    public Pointer Pointer => place.Pointer;

    /// <summary>What kind of value a member has, without asking for it; undefined when it is missing.</summary>
    public JsonValueKind KindOf(string name) => element.TryGetProperty(name, out var value) ? value.ValueKind : JsonValueKind.Undefined;

    public bool Has(string name) => element.TryGetProperty(name, out _);

    /// <summary>Whether there is not exactly one member of those asked for. Unknown members tell their own tale.</summary>
    public bool IsNotOne => found > 1 || element.GetPropertyCount() == 0;

    /// <summary>Whether a JSON Pointer leads somewhere in this object.</summary>
    public bool Resolves(string pointer) => JsonPointers.Resolve(element, pointer) is not null;

    /// <summary>The value of a member; a problem when it is required and missing.</summary>
    bool TryGet(string name, bool required, out JsonElement value)
    {
        context.Asked.Add(name);
        if (element.TryGetProperty(name, out value))
        {
            found++;
            return true;
        }
        if (required)
            context.Error(Pointer, "missing-member", "The member '{name}' is missing.", "Add it.", ("name", name));
        return false;
    }

    /// <summary>Takes a member without looking at it.</summary>
    public JsonElement? Raw(string name, bool required = false) => TryGet(name, required, out var value) ? value : null;

    /// <summary>Takes what every entry of a list may carry and no score depends on.</summary>
    public void SkipRemarks()
    {
        TextOrNull("note");
        Ids("evidence");
    }

    public Place Member(string name) => new(place, name);

    /// <summary>Ends the object: members nobody asked for, and members that stand twice, are problems.</summary>
    public void Done()
    {
        if (element.GetPropertyCount() != found) ReportSurplus();
        context.Asked.RemoveRange(firstAsked, context.Asked.Count - firstAsked);
    }

    void ReportSurplus()
    {
        var known = context.Asked.Skip(firstAsked).ToArray();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            if (context.IsSettled) return;
            var name = member.Name;
            var at = Pointer.Child(name);
            if (!seen.Add(name))
                context.Error(at, "duplicate-member", "The member '{name}' stands twice in one object.", "Keep one of them.", ("name", name));
            else if (Array.IndexOf(known, name) < 0)
                context.Error(at, "unknown-member", "There is no member '{name}' here.", Suggestion.Hint(name, known), ("name", name));
        }
    }

    void ReportSurrogate(Place at) => context.Error(
        at.Pointer, "lone-surrogate", "The text holds half of a surrogate pair.", "Write the character itself, in UTF-8.");

    void ReportType(string name, string wanted) => ReportType(Member(name), wanted);

    void ReportType(Place at, string wanted) =>
        context.Error(at.Pointer, "wrong-type", "Here {wanted} is asked.", "Change the value, or leave the member out when it is not known.", ("wanted", wanted));

    /// <summary>Reads an object member with a reader of its own; <c>null</c> when it is missing.</summary>
    public T? Object<T>(string name, Func<ObjectReader, T> read, bool required = false) where T : class =>
        TryGet(name, required, out var value) && TryNested(value, Member(name), read, out var result) ? result : null;

    /// <summary>Reads a list of objects; <c>default</c> when the member is missing.</summary>
    public ImmutableArray<T> Objects<T>(string name, Func<ObjectReader, T> read, bool required = false, int least = 0) where T : class =>
        List(name, (JsonElement value, Place at, out T item) => TryNested(value, at, read, out item), required, least);

    /// <summary>Reads a list of objects at the top of a record: missing means not recorded.</summary>
    public EntryList<T> Entries<T>(string name, Func<ObjectReader, T> read, bool required = false, int least = 0) where T : class =>
        Objects(name, read, required, least) is { IsDefault: false } list ? EntryList.Of(list) : default;

    bool TryNested<T>(JsonElement value, Place at, Func<ObjectReader, T> read, out T result)
    {
        result = default!;
        if (value.ValueKind != JsonValueKind.Object)
        {
            ReportType(at, "an object");
            return false;
        }
        var reader = new ObjectReader(value, context, at);
        result = read(reader);
        reader.Done();
        return true;
    }

    delegate bool ItemReader<T>(JsonElement value, Place at, out T item);

    ImmutableArray<T> List<T>(string name, ItemReader<T> read, bool required, int least)
    {
        if (!TryGet(name, required, out var value)) return default;
        if (value.ValueKind != JsonValueKind.Array)
        {
            ReportType(name, "a list");
            return [];
        }
        if (value.GetArrayLength() < least)
            context.Error(Pointer.Child(name), "too-few", "The list needs at least {least} entries.", "Add what is missing.", ("least", least));
        return Items(value, Member(name), read);
    }

    // What is told no more need not be looked for: the text is refused already.
    ImmutableArray<T> Items<T>(JsonElement list, Place at, ItemReader<T> read)
    {
        var items = ImmutableArray.CreateBuilder<T>(list.GetArrayLength());
        var index = 0;
        foreach (var each in list.EnumerateArray())
        {
            if (context.IsSettled) break;
            if (read(each, new Place(at, null, index++), out var item)) items.Add(item);
        }
        return items.DrainToImmutable();
    }
}
