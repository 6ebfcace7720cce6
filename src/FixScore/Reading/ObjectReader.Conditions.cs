using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading;

/// <summary>Items of <c>after</c> and <c>when</c>: an id, or an object with one member that says what must hold.</summary>
sealed partial class ObjectReader
{
    public ImmutableArray<Condition> Conditions(string name, bool required = false) =>
        List<Condition>(name, TryCondition, required, 0) is { IsDefault: false } items ? items : [];

    /// <summary>A list of lists of slugs; empty when the member is missing.</summary>
    public ImmutableArray<ImmutableArray<string>> SlugLists(string name) =>
        List<ImmutableArray<string>>(name, TrySlugList, false, 0) is { IsDefault: false } lists ? lists : [];

    bool TrySlugList(JsonElement value, Place at, out ImmutableArray<string> slugs)
    {
        slugs = [];
        if (value.ValueKind == JsonValueKind.Array)
        {
            slugs = Items(value, at, (JsonElement each, Place where, out string slug) => TryText(each, where, Slugs.Check, out slug));
            return true;
        }
        ReportType(at, "a list of ids");
        return false;
    }

    bool TryCondition(JsonElement value, Place at, out Condition item)
    {
        item = null!;
        if (value.ValueKind == JsonValueKind.String)
        {
            if (!TryText(value, at, Slugs.Check, out var id)) return false;
            item = new Condition.Done(id);
            return true;
        }
        return TryNested(value, at, reader => reader.Condition(), out item) && item is not null;
    }

    Condition Condition()
    {
        var removed = SlugOrNull("removed") is { } part ? new Condition.Removed(part) : null;
        var away = SlugOrNull("away") is { } shifted ? new Condition.Away(shifted) : null;
        var undone = SlugOrNull("undone") is { } joint ? new Condition.Undone(joint) : null;
        var any = List<Condition>("anyOf", TryCondition, false, 0) is { IsDefault: false } some ? new Condition.AnyOf(some) : null;
        var all = List<Condition>("allOf", TryCondition, false, 0) is { IsDefault: false } every ? new Condition.AllOf(every) : null;
        Condition?[] stated = [removed, away, undone, any, all];
        if (IsNotOne)
            context.Error(Pointer, "condition-form", "An item of 'after' or 'when' has exactly one of removed, away, undone, anyOf, allOf.", "Keep one, or use allOf.");
        return Array.Find(stated, each => each is not null)!;
    }

    public void Warn(string name, string code, string template, string hint) => context.Warn(Pointer.Child(name), code, template, hint);

    public void Report(string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        context.Error(Pointer, code, template, hint, values);
}
