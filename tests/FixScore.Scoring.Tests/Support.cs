using System.Collections.Immutable;
using System.Text;
using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

/// <summary>A criterion whose score is an observation of the same name: what a record says is what it scores.</summary>
sealed class Observed(string id) : IDeviceCriterion
{
    public static readonly Option<Bands> Curve = Options.Bands("curve", Bands.Linear((0, 0), (1, 1)), "1", "Points for the value, where it is used.");
    public static readonly Option<bool> UseCurve = Options.Flag("useCurve", false, "Whether the curve makes points of the value.");

    public CriterionInfo Info { get; } = new(id, 1, "Observed " + id, "an observation", "points", Direction.MoreIsBetter, "test", ["observations/" + id], [Curve, UseCurve]);

    public Outcome Judge(DeviceContext context) => Read(context, context.Case.Record.Observations.Where(o => o.Name == id && o.Parts.IsEmpty));

    public static Outcome Read(CriterionContext context, IEnumerable<Observation> observations)
    {
        if (observations.FirstOrDefault() is not { } found) return Outcome.Unknown(new Missing(Pointer.Root, "the observation"));
        var at = context.Case.At(found);
        if (found.Word == "throws") throw new InvalidOperationException("planted");
        if (found.Word == "not-applicable") return Outcome.NotApplicable(Reason.Of("no", "does not arise", [at]));
        var value = found.Number!.Value.Within(context.Scale.Min, context.Scale.Max);
        if (context.Get(UseCurve)) value = context.Get(Curve).Of(value, context.Scale.Whole);
        return Outcome.Scored(value, Reason.Of("seen", "observed {value}", [at], ("value", value)));
    }
}

/// <summary>The same for parts.</summary>
sealed class ObservedPart(string id) : IPartCriterion
{
    public CriterionInfo Info { get; } = new(id, 1, "Observed " + id, "an observation", "points", Direction.MoreIsBetter, "test", ["observations/" + id], [Observed.Curve, Observed.UseCurve]);

    public Outcome Judge(PartContext context) =>
        Observed.Read(context, context.Case.Record.Observations.Where(o => o.Name == id && o.Parts.Contains(context.Part.Id)));
}

sealed class ObservedPlugin : IPlugin
{
    public void Register(IPluginRegistry registry)
    {
        foreach (var name in (string[])["t.a", "t.b", "t.c", "t.d"]) registry.Add(new Observed(name));
        registry.Add(new ObservedPart("t.part")).Add(new ObservedPart("t.part-b"));
    }
}

static class Make
{
    public static readonly Catalogue Catalogue = Catalogue.Of(new ObservedPlugin());

    /// <summary>A profile on the scale 0 to 100 with the root given; more members may follow it.</summary>
    public static Profile Profile(string root, string more = "", string scale = """{ "min": 0, "max": 100, "decimals": 1, "rounding": "half-up" }""", string status = "own") =>
        ProfileFile.Read(Encoding.UTF8.GetBytes(Text(root, more, scale, status)), Catalogue).OrThrow();

    public static string Text(string root, string more = "", string scale = """{ "min": 0, "max": 100, "decimals": 1, "rounding": "half-up" }""", string status = "own") => $$"""
        { "format": "fixscore-profile/1", "id": "test", "version": "1.0.0", "title": "Test", "status": "{{status}}",
          "source": { "title": "Test", "locator": "here", "date": "2026-01-02" },
          "scale": {{scale}}, "root": {{root}} {{(more.Length > 0 ? "," + more : "")}} }
        """;

    public static RecordBuilder Record() => new RecordBuilder("sample").Part("board", "mainboard").Part("cell", "battery").Part("screen", "display-assembly");

    public static RecordDocument Document(this RecordBuilder builder) => new(builder.Build(), "sha256:" + new string('0', 64), []);

    public static RecordBuilder About(this RecordBuilder builder, string part, string name, Quantity value) => builder.With(record => record with
    {
        Observations = EntryList.Of(record.Observations.AsArray().Add(new() { Name = name, Number = value, Parts = [part] })),
    });

    public static ScoreDocument Score(this RecordBuilder builder, Profile profile, ScoringMode mode = ScoringMode.Strict) =>
        Scorer.Score(builder.Document(), profile, mode);

    public static ScoreNode At(this ScoreDocument score, string path) => Assert.Single(score.Nodes, node => node.Path == path);

    public static string Leaf(string id, string weight, string criterion, string more = "") =>
        $$"""{ "id": "{{id}}", "weight": {{weight}}, "criterion": "{{criterion}}"{{(more.Length > 0 ? ", " + more : "")}} }""";

    public static string Group(string aggregate, params string[] of) =>
        $$"""{ "id": "root", "aggregate": "{{aggregate}}", "of": [{{string.Join(",", of)}}] }""";
}
