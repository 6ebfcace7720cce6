using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>A row of the table: which sequence stands for a piece of work.</summary>
/// <param name="Word">The joint kind, the action or the name of the handling.</param>
/// <param name="Action">For a joint, the only action the row is for; <c>null</c> for every action.</param>
/// <param name="Sequence">The sequence.</param>
/// <param name="IsProcess">For an action, whether something works by itself for a while.</param>
/// <param name="Standing"><c>read</c>, <c>secondary</c>, <c>memory</c> or <c>own</c>.</param>
sealed record WorkRow(string Word, string? Action, WorkSequence Sequence, bool IsProcess, string Standing);

/// <summary>The table <c>Data/basic-most.json</c>, which is embedded: indices, and sequences for the actions and joints of records.</summary>
static class BasicMost
{
    static readonly JsonElement Data = Read();
    static readonly decimal SecondsPerIndex = Unit("seconds-per-tmu") * Unit("tmu-per-index");
    static readonly ImmutableArray<(int Index, decimal UpTo)> Process =
        [.. Rows("process").Select(row => (row.GetProperty("index").GetInt32(), row.GetProperty("upToSeconds").GetDecimal()))];

    public static string Source { get; } = Text(Data, "source")!;

    public static string Version { get; } = Text(Data, "version")!;

    /// <summary>The indices that each letter can have, with their standing.</summary>
    public static ImmutableArray<(char Parameter, int Index, string Standing)> Indices { get; } =
        [.. Rows("indices").Select(row => (Text(row, "parameter")![0], row.GetProperty("index").GetInt32(), Text(row, "standing")!))];

    public static ImmutableArray<WorkRow> Joints { get; } = [.. Rows("joints").Select(row => Work(row, "joint"))];

    public static ImmutableArray<WorkRow> Actions { get; } = [.. Rows("actions").Select(row => Work(row, "action"))];

    public static ImmutableArray<WorkRow> Handling { get; } = [.. Rows("handling").Select(row => Work(row, "name"))];

    public static decimal ChangeOfTool { get; } = Of(Handling, "change-of-tool").Sequence.Sum;

    public static decimal PartAside { get; } = Of(Handling, "part-aside").Sequence.Sum;

    /// <summary>Seconds that a sum of indices stands for.</summary>
    public static decimal SecondsOf(decimal sum) => sum * SecondsPerIndex;

    /// <summary>The row for an action done on a joint.</summary>
    public static WorkRow Of(OperationAction action, JointKind joint) =>
        Joints.FirstOrDefault(row => row.Word == Word.Of(joint) && row.Action == Word.Of(action))
        ?? Joints.First(row => row.Word == Word.Of(joint) && row.Action is null);

    /// <summary>The row for an action that undoes no joint.</summary>
    public static WorkRow Of(OperationAction action) => Of(Actions, Word.Of(action));

    /// <summary>The index of a process: the first column whose seconds are not below those observed. Past the table, seconds turned into whole indices.</summary>
    public static decimal ProcessIndex(decimal seconds)
    {
        if (seconds <= 0) return 0;
        foreach (var (index, upTo) in Process)
            if (seconds <= upTo) return index;
        return decimal.Ceiling(seconds / SecondsPerIndex);
    }

    static WorkRow Of(ImmutableArray<WorkRow> rows, string word) => rows.First(row => row.Word == word);

    static WorkRow Work(JsonElement row, string named) => new(
        Text(row, named)!, named == "joint" ? Text(row, "action") : null, WorkSequence.Parse(Text(row, "sequence")!),
        row.TryGetProperty("process", out var process) && process.GetBoolean(), Text(row, "standing")!);

    static decimal Unit(string name) => Rows("units").First(row => Text(row, "name") == name).GetProperty("value").GetDecimal();

    static JsonElement.ArrayEnumerator Rows(string list) => Data.GetProperty(list).EnumerateArray();

    static string? Text(JsonElement row, string member) => row.TryGetProperty(member, out var text) ? text.GetString() : null;

    static JsonElement Read()
    {
        using var data = typeof(BasicMost).Assembly.GetManifestResourceStream("basic-most.json")!;
        using var document = JsonDocument.Parse(data);
        return document.RootElement.Clone();
    }
}
