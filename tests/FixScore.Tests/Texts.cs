using System.Text;
using System.Text.Json.Nodes;
using FixScore.Tests.Criteria;

namespace FixScore.Tests;

/// <summary>Texts without faults to change, and what reading them gives.</summary>
static class Texts
{
    public static string Tiny { get; } = Encoding.UTF8.GetString(Corpus.Named("records/control-tiny.json").Bytes);

    public static string Bench { get; } = Encoding.UTF8.GetString(Corpus.Named("records/control-bench.json").Bytes);

    public static string Profile { get; } = Encoding.UTF8.GetString(Corpus.Named("profiles/control.json").Bytes);

    public static IEnumerable<string> Demos => Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Demo"), "*.json").Order(StringComparer.Ordinal);

    public static string Example(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Examples", name));

    public static ReadResult<RecordDocument> Record(string text) => RecordFile.Read(Encoding.UTF8.GetBytes(text));

    /// <summary>The small record with other or further members.</summary>
    public static ReadResult<RecordDocument> TinyWith(string members) => Record(Merged(Tiny, members));

    /// <summary>The bench record with other or further members.</summary>
    public static ReadResult<RecordDocument> BenchWith(string members) => Record(Merged(Bench, members));

    public static ReadResult<Profile> ProfileOf(string text, params string[] bases) =>
        ProfileFile.Read(Encoding.UTF8.GetBytes(text), FakePlugin.Catalogue, ProfileLibrary.Of(bases.Select(each => ("test", (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(each)))));

    /// <summary>The control profile with other or further members.</summary>
    public static ReadResult<Profile> ProfileWith(string members, params string[] bases) => ProfileOf(Merged(Profile, members), bases);

    /// <summary>Codes and places, in the order told.</summary>
    public static string[] Told<T>(this ReadResult<T> result) where T : class => [.. result.Problems.Select(each => $"{each.Problem.Code} {each.Problem.At}".TrimEnd())];

    public static string Merged(string text, string members)
    {
        var merged = JsonNode.Parse(text)!.AsObject();
        foreach (var (name, value) in JsonNode.Parse(members)!.AsObject()) merged[name] = value?.DeepClone();
        return merged.ToJsonString();
    }
}
