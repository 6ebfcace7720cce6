using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>The usual cautions for what records say can hurt. Common practice, no source; local codes and licensed practice come first.</summary>
public static class SafetyText
{
    /// <summary>The cautions that apply to records, in the order of the hazards; the line about local rules is always last.</summary>
    public static IEnumerable<string> For(IEnumerable<TeardownRecord> records)
    {
        var hazards = records.SelectMany(HazardsOf).ToHashSet();
        return Enum.GetValues<Hazard>().Where(hazards.Contains).Select(Text)
            .Append("These are the usual cautions, not a safety plan. Local codes, the makers' data sheets and licensed practice come first.");
    }

    static IEnumerable<Hazard> HazardsOf(TeardownRecord record) =>
        record.Parts.SelectMany(part => part.Hazards)
            .Concat(record.Operations.SelectMany(operation => operation.Hazards))
            .Concat(record.Parts.Where(part => part.Role == Roles.Battery).Select(_ => Hazard.LithiumCell));

    static string Text(Hazard hazard) => hazard switch
    {
        Hazard.LithiumCell => "Lithium cells: discharge below a quarter first, no sharp tools, never bend or pierce, keep below the heat limit of the cell's data sheet, and have a way to contain a fire.",
        Hazard.Glass => "Glass: eye protection and cut-resistant gloves; tape cracked glass before prying.",
        Hazard.SharpEdge => "Sharp edges: gloves.",
        Hazard.MainsCapacitor => "Charged capacitors: discharge and measure before touching; leave mains parts to licensed people.",
        Hazard.Laser => "Lasers: never look into an open emitter.",
        Hazard.HotSurface => "Hot surfaces: let tools and parts cool where nobody reaches for them.",
        Hazard.FlammableSolvent => "Solvents: follow the safety data sheet, ventilate, keep flames, sparks and live circuits away.",
        Hazard.Fumes => "Fumes: extract them at the source.",
        Hazard.SpringTension => "Springs: eye protection, release tension slowly.",
        Hazard.StrongMagnet => "Strong magnets: keep away from implants and fingers.",
        _ => "Static: wrist strap and mat.",
    };
}
