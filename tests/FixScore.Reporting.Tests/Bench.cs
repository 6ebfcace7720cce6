using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

namespace FixScore.Reporting.Tests;

/// <summary>Judgements to report on.</summary>
static class Bench
{
    static readonly Catalogue Installed = Catalogue.Of(new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin());

    public static ImmutableArray<Judgement> Demo { get; } =
        [.. from profile in (string[])["bench-balanced", "bench-limiting"]
            from record in (string[])["brindlewick-pane-10", "larkfield-slate-2", "larkfield-slate-3", "ostravane-plinth-11"]
            select Judge(record, profile)];

    public static Judgement Judge(string record, string profile, Action<JsonNode>? change = null)
    {
        var node = JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Records", record + ".json")))!;
        change?.Invoke(node);
        var document = RecordFile.Read(JsonSerializer.SerializeToUtf8Bytes(node), Installed).OrThrow();
        var rules = ProfileFile.Load(Path.Combine(AppContext.BaseDirectory, "Profiles", profile + ".json"), Installed);
        return new(document.Record, rules, Scorer.Score(document, rules));
    }

    /// <summary>The same judgement of another record with another total.</summary>
    public static Judgement With(this Judgement judgement, string id, Interval total) =>
        judgement with { Record = judgement.Record with { Id = id }, Score = judgement.Score with { Total = total, Shown = total } };
}
