using System.Collections.Immutable;
using FixScore.Cli.Terminal;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Which parts of a record were asked for.</summary>
sealed record AskedParts(TeardownRecord Record, ImmutableArray<Part> Parts)
{
    /// <summary>The parts of each record: all of them, the one with the id, or those with the role.</summary>
    /// <exception cref="UsageException">No record has such a part.</exception>
    public static ImmutableArray<AskedParts> Of(ImmutableArray<TeardownRecord> records, string? word)
    {
        ImmutableArray<AskedParts> asked = [.. records.Select(record => new AskedParts(record, Of(record, word)))];
        return asked.Any(each => !each.Parts.IsEmpty) ? asked : throw new UsageException(Unknown(records, word!));
    }

    static ImmutableArray<Part> Of(TeardownRecord record, string? word)
    {
        if (word is null) return record.Parts.AsArray();
        ImmutableArray<Part> named = [.. record.Parts.Where(part => part.Id == word)];
        return named.IsEmpty ? [.. record.Parts.Where(part => part.Role == word)] : named;
    }

    static string Unknown(ImmutableArray<TeardownRecord> records, string word)
    {
        if (records.All(record => record.Absent.Contains(word))) return $"There is no part '{word}': it was looked for and is not in this device.";
        var known = records.SelectMany(record => record.Parts).SelectMany(part => new[] { part.Id, part.Role }).Distinct(StringComparer.Ordinal);
        return $"There is no part or role '{word}' in {string.Join(", ", records.Select(record => record.Id))}. {Suggestion.Hint(word, [.. known])}";
    }
}
