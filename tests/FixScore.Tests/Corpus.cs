using System.Text.Json;

namespace FixScore.Tests;

/// <summary>Files that each carry stated faults, and a few without any. They were written from the formats, not from the reader.</summary>
static class Corpus
{
    static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web);

    public static IReadOnlyList<CorpusFile> Files { get; } =
        JsonSerializer.Deserialize<CorpusFile[]>(File.ReadAllBytes(PathOf("manifest.json")), Names)!;

    public static CorpusFile Named(string name) => Files.Single(file => file.File == name);

    public static string PathOf(string name) => Path.Combine(AppContext.BaseDirectory, "Corpus", name);
}

/// <summary>A file and what is wrong with it.</summary>
/// <param name="File">Its name.</param>
/// <param name="Kind">Whether it is a record or a profile.</param>
/// <param name="Syntax">Whether it is no JSON in UTF-8 at all.</param>
/// <param name="Problems">What is wrong, and where.</param>
/// <param name="With">Base profiles that are at hand.</param>
sealed record CorpusFile(string File, string Kind, bool Syntax, CorpusProblem[] Problems, string[]? With = null)
{
    public bool IsRecord => Kind == "record";

    public byte[] Bytes => System.IO.File.ReadAllBytes(Corpus.PathOf(File));

    /// <summary>What reading it gives, whatever is read.</summary>
    public (object? Value, IReadOnlyList<LocatedProblem> Problems) Read()
    {
        if (IsRecord) return Both(RecordFile.Read(Bytes));
        return Both(ProfileFile.Read(Bytes, Criteria.FakePlugin.Catalogue, new CorpusBases(With ?? [])));
    }

    static (object?, IReadOnlyList<LocatedProblem>) Both<T>(ReadResult<T> result) where T : class => (result.Value, result.Problems);
}

/// <summary>Something wrong.</summary>
/// <param name="Pointer">Where.</param>
/// <param name="What">What.</param>
/// <param name="Schema">Whether a JSON Schema can see it.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Needs">What finds it when the reader alone cannot: <c>routes</c> or <c>swaps</c>.</param>
sealed record CorpusProblem(string Pointer, string What, bool Schema, string Severity = "error", string? Needs = null);

/// <summary>Base profiles from files of the corpus.</summary>
sealed class CorpusBases(string[] files) : IProfileSource
{
    public ReadOnlyMemory<byte>? Find(string id, string version)
    {
        foreach (var file in files)
        {
            using var document = JsonDocument.Parse(File.ReadAllBytes(Corpus.PathOf(file)));
            if (document.RootElement.GetProperty("id").GetString() == id && document.RootElement.GetProperty("version").GetString() == version)
                return File.ReadAllBytes(Corpus.PathOf(file));
        }
        return null;
    }
}
