using System.Collections.Immutable;
using System.Text;
using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Comparing;

/// <summary>A criterion whose score is the observation of its name.</summary>
sealed class Observed(string id) : IDeviceCriterion
{
    public CriterionInfo Info { get; } = new(id, 1, id, "an observation", "points", Direction.MoreIsBetter, "test", ["observations/" + id], []);

    public Outcome Judge(DeviceContext context)
    {
        if (context.Case.Record.Observations.FirstOrDefault(each => each.Name == id) is not { } found) return Outcome.Unknown(new Missing(Pointer.Root, "the observation"));
        return Outcome.Scored(found.Number!.Value.Within(context.Scale.Min, context.Scale.Max), Reason.Of("seen", "observed", [context.Case.At(found)]));
    }
}

/// <summary>The same for a part.</summary>
sealed class ObservedPart(string id) : IPartCriterion
{
    public CriterionInfo Info { get; } = new(id, 1, id, "an observation", "points", Direction.MoreIsBetter, "test", ["observations/" + id], []);

    public Outcome Judge(PartContext context) =>
        context.Case.Record.Observations.FirstOrDefault(each => each.Name == id && each.Parts.Contains(context.Part.Id)) is { } found
            ? Outcome.Scored(found.Number!.Value.Within(context.Scale.Min, context.Scale.Max), Reason.Of("seen", "observed", [context.Case.At(found)]))
            : Outcome.Unknown(new Missing(Pointer.Root, "the observation"));
}

sealed class ObservedPlugin : IPlugin
{
    public void Register(IPluginRegistry registry) => registry.Add(new Observed("t.a")).Add(new Observed("t.b")).Add(new ObservedPart("t.part"));
}

/// <summary>Records with two observations, and profiles that weigh them.</summary>
static class Bench
{
    static readonly Catalogue Catalogue = Catalogue.Of(new ObservedPlugin());

    public static Profile Profile(string id, int a, int b, string aggregate = "weighted-arithmetic", int max = 100, string more = "") => Read(id, max, $$"""
        { "id": "root", "aggregate": "{{aggregate}}", "of": [
          { "id": "first", "weight": {{a}}, "criterion": "t.a" }, { "id": "second", "weight": {{b}}, "criterion": "t.b" }] } {{more}}
        """);

    /// <summary>A leaf and a group that are spread over parts; parts of one role count as the lowest.</summary>
    public static Profile Spread() => Read("spread", 100, """
        { "id": "root", "aggregate": "weighted-arithmetic", "of": [
          { "id": "leaf", "weight": 1, "criterion": "t.part", "over": { "set": "main", "instances": "lowest", "absent": "skip" } },
          { "id": "group", "weight": 1, "aggregate": "weighted-arithmetic", "over": { "set": "main", "instances": "lowest", "absent": "skip" }, "of": [{ "id": "inner", "weight": 1, "criterion": "t.part" }] },
          { "id": "device", "weight": 2, "criterion": "t.a" }] },
        "partSets": { "main": { "battery": 3, "mainboard": 1, "hinge": 1 } },
        "gates": [{ "id": "low", "when": { "node": "device", "below": 30 }, "cap": 20, "reason": "planted" }]
        """);

    static Profile Read(string id, int max, string root) => ProfileFile.Read(Encoding.UTF8.GetBytes($$"""
        { "format": "fixscore-profile/1", "id": "{{id}}", "version": "1.0.0", "title": "Test", "status": "own",
          "source": { "title": "Test", "locator": "here", "date": "2026-01-02" },
          "scale": { "min": 0, "max": {{max}}, "decimals": 1, "rounding": "half-up" }, "root": {{root}} }
        """), Catalogue).OrThrow();

    public static RecordBuilder Record(string id, decimal? a, decimal? b)
    {
        var builder = new RecordBuilder(id).Part("board", "mainboard").Part("cell", "battery");
        if (a is { } first) builder.Observe("t.a", first);
        return b is { } second ? builder.Observe("t.b", second) : builder;
    }

    public static RecordDocument Document(string id, decimal? a, decimal? b) => RecordDocument.Of(Record(id, a, b).Build());
}
