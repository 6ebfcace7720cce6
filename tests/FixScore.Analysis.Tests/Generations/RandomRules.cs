using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FixScore.Analysis.Tests.Comparing;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Generations;

/// <summary>Profiles of any depth and aggregate, and records for them with open observations.</summary>
static class RandomRules
{
    const int Most = 9;

    static readonly string[] Aggregates = ["weighted-arithmetic", "weighted-geometric", "weighted-harmonic", "minimum"];
    static readonly string[] Policies = ["interval", "worst", "skip"];

    static readonly Catalogue Catalogue = Catalogue.Of(new Many());

    static readonly Gen<string> Leaf = Gen.Select(Gen.Int[0, Most - 1], OneOf(Policies), Gen.Bool).Select((criterion, unknown, spread) =>
        $""" "unknown": "{unknown}", "criterion": "{(spread ? "p" : "t")}.{criterion}" {(spread ? """, "over": { "set": "main", "instances": "lowest", "absent": "skip" }""" : "")} """);

    static readonly Gen<string> Carry = OneOf("", "", """, "carry": { "decimals": 1, "rounding": "half-up" } """);

    public static Gen<Profile> Profile { get; } = Gen.Select(Group(2), Gen.Int[0, 60], Gen.Bool).Select((root, cap, gated) => Read(root, gated ? cap : null));

    /// <summary>For each criterion what is observed, or nothing; never 0 by chance alone.</summary>
    public static Gen<RecordDocument> Record { get; } = Gen.OneOf(Gen.Int[0, 1_000].Select(each => (decimal?)each / 10m), Gen.Const((decimal?)null)).Array[2 * Most].Select(Document);

    static Gen<string> Group(int depth) => Gen.Select(OneOf(Aggregates), (depth == 0 ? Leaf : Gen.OneOf(Leaf, Group(depth - 1))).Array[1, 4], Gen.Int[1, 9].Array[4], Carry).Select((aggregate, of, weights, carry) =>
        $$""" "aggregate": "{{aggregate}}", "of": [{{string.Join(',', of.Zip(weights, (child, weight) => $$"""{ "weight": {{weight}}, {{child}} }"""))}}] {{carry}} """);

    static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    /// <summary>A profile of the members of its root, whose nodes get names.</summary>
    public static Profile Read(string root, int? cap = null)
    {
        var node = JsonNode.Parse($$"""{ {{root}} }""")!.AsObject();
        var number = 0;
        Name(node, ref number);
        var gate = cap is null ? "" : $$""", "gates": [{ "id": "low", "when": { "node": "n1", "below": 30 }, "cap": {{cap}}, "reason": "planted" }]""";
        return ProfileFile.Read(Encoding.UTF8.GetBytes($$"""
            { "format": "fixscore-profile/1", "id": "random", "version": "1.0.0", "title": "Test", "status": "own",
              "source": { "title": "Test", "locator": "here", "date": "2026-01-02" }, "partSets": { "main": { "battery": 3, "mainboard": 1 } },
              "scale": { "min": 0, "max": 100, "decimals": 1, "rounding": "half-up" }, "root": {{node.ToJsonString()}} {{gate}} }
            """), Catalogue).OrThrow();
    }

    static void Name(JsonObject node, ref int number)
    {
        node["id"] = $"n{number++}";
        foreach (var child in node["of"]?.AsArray() ?? []) Name(child!.AsObject(), ref number);
    }

    /// <summary>A record of observations, those of the device first.</summary>
    public static RecordDocument Document(params decimal?[] points)
    {
        var builder = new RecordBuilder("r").Part("board", "mainboard").Part("cell", "battery");
        foreach (var (i, value) in points.Index())
            if (value is { } known) builder = i < Most ? builder.Observe($"t.{i}", known) : builder.Observe($"p.{i - Most}", known);
        var record = builder.Build();
        return RecordDocument.Of(record with { Observations = [.. record.Observations.Select(each => each.Name[0] == 'p' ? each with { Parts = ["cell"] } : each)] });
    }

    sealed class Many : IPlugin
    {
        public void Register(IPluginRegistry registry)
        {
            for (var i = 0; i < Most; i++) registry.Add(new Observed($"t.{i}")).Add(new ObservedPart($"p.{i}"));
        }
    }
}
