using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Analysis.Comparing;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;
using FixScore.Reporting.Reports;
using FixScore.Requirements.Ecodesign;
using FixScore.Requirements.PairingLaws;

namespace FixScore.Reporting.Tests;

/// <summary>Judgements to report on.</summary>
static class Bench
{
    static readonly Catalogue Installed = Catalogue.Of(new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin(), new EcodesignPlugin(), new PairingLawsPlugin());

    public static ImmutableArray<Judgement> Demo { get; } =
        [.. from profile in (string[])["bench-balanced", "bench-limiting"]
            from record in (string[])["brindlewick-pane-10", "larkfield-slate-2", "larkfield-slate-3", "ostravane-plinth-11"]
            select Judge(record, profile)];

    /// <summary>All that is told of the demo's records.</summary>
    public static ReportInput Report { get; } = ReportOf((string[])["brindlewick-pane-10", "larkfield-slate-2", "larkfield-slate-3", "ostravane-plinth-11"], ["bench-balanced", "bench-limiting"], ("larkfield-slate-2", "larkfield-slate-3"));

    public static ReportInput ReportOf(IEnumerable<string> records, IEnumerable<string> profiles, params ImmutableArray<(string, string)> generations) => ReportOf(
        [.. records.Select(record => Document(record))], profiles, generations);

    public static ReportInput ReportOf(ImmutableArray<RecordDocument> records, IEnumerable<string> profiles, params ImmutableArray<(string, string)> generations) =>
        ReportInputs.Of(records, [.. profiles.Select(Rules)], Installed.Requirements, generations, new(WeightSpread.Uniform, 500, 1));

    public static RecordDocument Document(string record, Action<JsonNode>? change = null)
    {
        var node = JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Records", record + ".json")))!;
        change?.Invoke(node);
        return RecordFile.Read(JsonSerializer.SerializeToUtf8Bytes(node), Installed).OrThrow();
    }

    static Profile Rules(string profile) => ProfileFile.Load(Path.Combine(AppContext.BaseDirectory, "Profiles", profile + ".json"), Installed);

    public static Judgement Judge(string record, string profile, Action<JsonNode>? change = null)
    {
        var (document, rules) = (Document(record, change), Rules(profile));
        return new(document.Record, rules, Scorer.Score(document, rules));
    }

    /// <summary>The same judgement of another record with another total.</summary>
    public static Judgement With(this Judgement judgement, string id, Interval total) =>
        judgement with { Record = judgement.Record with { Id = id }, Score = judgement.Score with { Total = total, Shown = total } };
}
