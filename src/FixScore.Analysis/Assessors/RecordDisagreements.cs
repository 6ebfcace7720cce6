using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Analysis.Assessors;

/// <summary>Compares records member by member. Stateless, so safe to use from any thread.</summary>
/// <remarks>
/// Entries of lists are matched by id, or else by what they are about (part, subject, name, function, unit, topic); their order
/// does not count. The same is true for lists of words, except the operations of a sequence. What names the record, the
/// assessor and the evidence is not compared.
/// </remarks>
public static class RecordDisagreements
{
    static readonly string[] NotCompared = ["/format", "/id", "/assessment/assessor", "/assessment/date", "/evidence"];

    /// <summary>All members that differ, ordinal by path. A member that only some recorded is one disagreement, whatever is below it.</summary>
    /// <param name="records">The records.</param>
    public static ImmutableArray<Disagreement> Between(ImmutableArray<TeardownRecord> records) =>
        BetweenJson(records.Select(record => System.Text.Encoding.UTF8.GetString(RecordFile.ToJson(record))));

    /// <summary>The same for records as JSON.</summary>
    internal static ImmutableArray<Disagreement> BetweenJson(IEnumerable<string> records)
    {
        var documents = records.Select(record => JsonDocument.Parse(record)).ToArray();
        try
        {
            return [.. Walk(Pointer.Root, [.. documents.Select(document => new RecordNode(document.RootElement, Pointer.Root))])
                .OrderBy(each => each.Path.Text, StringComparer.Ordinal)];
        }
        finally
        {
            foreach (var document in documents) document.Dispose();
        }
    }

    static IEnumerable<Disagreement> Walk(Pointer path, ImmutableArray<RecordNode?> nodes)
    {
        if (Array.IndexOf(NotCompared, path.Text) >= 0 || path.Text.EndsWith("/evidence", StringComparison.Ordinal)) return [];
        if (nodes.All(node => node is { IsObject: true }) || nodes.All(node => node is { IsListOfEntries: true })) return Below(path, nodes);
        ImmutableArray<string?> texts = [.. nodes.Select(node => node?.Text)];
        return texts.All(text => text == texts[0]) ? [] : [new(path, [.. nodes.Select(node => node?.At)], texts)];
    }

    static IEnumerable<Disagreement> Below(Pointer path, ImmutableArray<RecordNode?> nodes)
    {
        var children = nodes.Select(node => node!.Children()).ToArray();
        return children.SelectMany(each => each.Keys).Distinct(StringComparer.Ordinal)
            .SelectMany(key => Walk(path.Child(key), [.. children.Select(each => each.GetValueOrDefault(key))]));
    }
}
