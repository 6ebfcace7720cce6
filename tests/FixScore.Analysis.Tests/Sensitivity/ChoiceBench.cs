using System.Collections.Immutable;
using System.Text;
using FixScore.Analysis.Sensitivity;
using FixScore.Analysis.Sensitivity.Profiles;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Sensitivity;

/// <summary>A criterion that makes points of an observation by bands: a straight line from 0 to 100.</summary>
sealed class Banded(string id) : IDeviceCriterion
{
    static readonly Option<Bands> Bands = Options.Bands("bands", FixScore.Bands.Linear((0, 0), (100, 1)), "points", "What the observation gives.");

    public CriterionInfo Info { get; } = new(id, 1, id, "an observation", "points", Direction.MoreIsBetter, "test", ["observations/" + id], [Bands]);

    public Outcome Judge(DeviceContext context) => context.Case.Record.Observations.FirstOrDefault(each => each.Name == id) is { } found
        ? Outcome.Scored(context.Get(Bands).Of(found.Number!.Value.Within(0, 100), context.Scale.Whole), Reason.Of("seen", "observed", [context.Case.At(found)]))
        : Outcome.Unknown(new Missing(Pointer.Root, "the observation"));
}

sealed class ChoicePlugin : IPlugin
{
    public void Register(IPluginRegistry registry) => registry.Add(new Banded("t.banded")).Add(new Comparing.Observed("t.plain"));
}

/// <summary>Profiles of a line with bands and one without, with choices as asked.</summary>
static class ChoiceBench
{
    public const string Gate = """, "gates": [{ "id": "low", "when": { "node": "banded", "below": 30 }, "cap": 40, "reason": "planted" }]""";

    public const string Reading = """, "readings": [{ "id": "silent", "point": "the weight", "source": "here", "taken": "one", "otherwise": [{ "text": "three", "nodes": { "banded": { "weight": 3 } } }] }]""";

    static readonly Catalogue Catalogue = Catalogue.Of(new ChoicePlugin());

    public static Profile Profile(string more = "", int banded = 1, int plain = 1) => ProfileFile.Read(Encoding.UTF8.GetBytes($$"""
        { "format": "fixscore-profile/1", "id": "choices", "version": "1.0.0", "title": "Test", "status": "own",
          "source": { "title": "Test", "locator": "here", "date": "2026-01-02" },
          "scale": { "min": 0, "max": 100, "decimals": 1, "rounding": "half-up" },
          "root": { "id": "root", "aggregate": "weighted-arithmetic", "of": [
            { "id": "banded", "weight": {{banded}}, "criterion": "t.banded" }, { "id": "plain", "weight": {{plain}}, "criterion": "t.plain" }] } {{more}} }
        """), Catalogue).OrThrow();

    public static RecordDocument Record(string id, decimal? banded, decimal? plain)
    {
        var builder = new RecordBuilder(id).Part("board", "mainboard");
        if (banded is { } first) builder.Observe("t.banded", first);
        if (plain is { } second) builder.Observe("t.plain", second);
        return RecordDocument.Of(builder.Build());
    }

    /// <summary>The study with the weights as they are and the arithmetic mean alone, so that only further choices act.</summary>
    public static (ImmutableArray<RankShiftInput> Inputs, SobolIndices Indices) Alone(Profile profile, params ImmutableArray<RecordDocument> records)
    {
        var choices = ProfileChoices.Of(profile, new())!;
        RankShiftInputs uncertain = new([.. choices.Lines.Weights.Select(weight => (Interval)weight)], [ScoreRules.Arithmetic], []);
        var (runs, inputs) = (KernelRuns.Of(records, choices, 1, default), new ProfileInputs(choices));
        return ([.. RankShiftSensitivity.OfWeightsAndRule(choices.Lines.Ids, uncertain), .. inputs.Further], SobolIndices.Of(new ProfileModel(choices, runs, uncertain).Shift, inputs.Count, new(4_096)));
    }
}
