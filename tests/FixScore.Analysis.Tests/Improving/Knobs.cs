using System.Collections.Immutable;
using System.Text;
using FixScore.Analysis.Improving;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Improving;

/// <summary>A criterion of observations: the lowest of them or their mean. It suggests to raise each by stated amounts.</summary>
/// <param name="id">Its id.</param>
/// <param name="names">The observations it reads.</param>
/// <param name="lowest">Whether the lowest counts, else the mean.</param>
/// <param name="raises">Suggestions: which observation is set to what.</param>
/// <param name="reads">What it says it reads; the truth unless given.</param>
/// <param name="adds">Id of a unit that each suggestion adds; none unless given.</param>
sealed class Knobs(string id, string[] names, bool lowest, (string Name, decimal Value)[] raises, string? reads = null, string? adds = null) : IDeviceCriterion, IDesignAdvisor
{
    public CriterionInfo Info { get; } = new(
        id, 1, id, "observations", "points", Direction.MoreIsBetter, "test", [.. reads is null ? names.Select(name => "observations/" + name) : [reads]], []);

    DesignPatch Added => adds is null ? DesignPatch.Empty : DesignPatch.Empty.Append(Pointer.Root.Child("assessment").Child("units"), new() { ["id"] = adds });

    public Knobs As(string other) => new(other, names, lowest, raises, reads);

    public Outcome Judge(DeviceContext context)
    {
        var values = names.Select(name => context.Case.Record.Observations.First(each => each.Name == name).Number!.Value.Min!.Value).ToArray();
        return Outcome.Scored(lowest ? values.Min() : values.Sum() / values.Length, Reason.Of("seen", "Seen.", []));
    }

    public IEnumerable<DesignChange> Suggest(DeviceContext context) => raises.Select((raise, i) =>
        DesignPatch.Empty.Set(context.Case.At(context.Case.Record.Observations.First(each => each.Name == raise.Name)), "value", raise.Value).Then(Added)
            .As($"raise-{i}", Reason.Of("raise", "Raise {name} to {value}.", [], ("name", raise.Name), ("value", raise.Value))));
}

/// <summary>Criteria, a record of numbers and a profile for them.</summary>
sealed record Bench(RecordDocument Document, Profile Profile)
{
    public static Bench Of(decimal[] values, string aggregate, Knobs[] criteria, string more = "")
    {
        var record = values.Index().Aggregate(new RecordBuilder().Part("battery"), (builder, value) => builder.Observe($"t.o{value.Index}", value.Item)).Build();
        var leaves = criteria.Select(each => $$"""{ "id": "{{each.Info.Id.Replace('.', '-')}}", "weight": 1, "criterion": "{{each.Info.Id}}" }""");
        var text = $$"""
            { "format": "fixscore-profile/1", "id": "knobs", "version": "1.0.0", "title": "Knobs", "status": "own",
              "source": { "title": "Test", "locator": "here", "date": "2026-01-02" },
              "scale": { "min": 0, "max": 100, "decimals": 1, "rounding": "half-up" },
              "root": { "id": "total", "aggregate": "{{aggregate}}", "of": [ {{string.Join(", ", leaves)}} ] } {{more}} }
            """;
        return new(RecordDocument.Of(record), ProfileFile.Read(Encoding.UTF8.GetBytes(text), Catalogue.Of(new Plugin(criteria))).OrThrow());
    }

    public Improvement To(decimal points, int effort = Improvement.UsualEffort) => Improvement.Search(Document, Profile, Target.OfPoints(points), effort);

    public static string[] Names(ImprovementSet set) => [.. set.Changes.Select(change => change.Id)];

    sealed class Plugin(Knobs[] criteria) : IPlugin
    {
        public void Register(IPluginRegistry registry)
        {
            foreach (var each in criteria) registry.Add(each);
        }
    }
}
