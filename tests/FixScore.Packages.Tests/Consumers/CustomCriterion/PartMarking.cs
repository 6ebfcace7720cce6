using FixScore;

[assembly: Plugin<Acme.AcmePlugin>]

namespace Acme;

/// <summary>Share of parts that say what they are.</summary>
public sealed class PartMarking : IDeviceCriterion
{
    static readonly Option<Bands> Marks = Options.Bands("bands", Bands.Linear((0.2m, 0), (0.9m, 1)), "share", "Points for the share of marked parts.");

    public CriterionInfo Info { get; } = new("acme.part-marking", 1, "Part marking", "parts that carry a marking", "share",
        Direction.MoreIsBetter, "own judgement, no source", ["parts[].perUnit"], [Marks]);

    public Outcome Judge(DeviceContext context)
    {
        var parts = context.Case.Record.Parts;
        var marked = parts.Where(part => part.PerUnit.Any(unit => unit.Marking is { Length: > 0 })).ToArray();
        var open = parts.Where(part => part.PerUnit.All(unit => unit.Marking is null)).Select(part => new Missing(context.Case.At(part), "perUnit.marking")).ToArray();
        var share = new Interval((decimal)marked.Length / parts.Count, (decimal)(marked.Length + open.Length) / parts.Count);
        return Outcome.Scored(context.Points(Marks, share), Reason.Of("marked", "{marked} of {all} parts are marked.",
            marked.Select(context.Case.At), ("marked", marked.Length), ("all", parts.Count))) with { Missing = [.. open] };
    }
}

public sealed class AcmePlugin : IPlugin { public void Register(IPluginRegistry registry) => registry.Add(new PartMarking()); }
