using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Safety;

/// <summary>The hazards of one way, operation by operation: its own, those of its tools, those of the parts it takes or moves.</summary>
sealed class HazardsOnWay(TeardownRecord record, Way way)
{
    /// <summary>Parts taken or moved, in the order of the record.</summary>
    public IEnumerable<Part> Parts => PartsOf(way.Stops.SelectMany(stop => stop.Taken));

    public IEnumerable<Exposure> All => [.. way.Stops.SelectMany(Of), .. way.Stops.SelectMany(HeatedCells)];

    IEnumerable<Exposure> Of(Stop stop) =>
    [
        .. Exposure.Listed(stop.Operation.Hazards, stop.Operation),
        .. Heat(stop),
        .. stop.Operation.Action == OperationAction.ApplySolvent ? [new(HazardWords.Solvent, stop.Operation)] : Array.Empty<Exposure>(),
        .. ToolsOf(stop).Where(tool => tool.Solvent is not null).Select(tool => new Exposure(HazardWords.Solvent, tool)),
        .. PartsOf(stop.Taken).SelectMany(part => Exposure.Listed(part.Hazards, part)),
    ];

    IEnumerable<Exposure> Heat(Stop stop) =>
    [
        .. stop.Operation.Action == OperationAction.Heat ? [new(HazardWords.Hot, stop.Operation)] : Array.Empty<Exposure>(),
        .. ToolsOf(stop).Where(tool => tool.HeatC is not null).Select(tool => new Exposure(HazardWords.Hot, tool)),
    ];

    IEnumerable<Exposure> HeatedCells(Stop stop) =>
        IsHot(stop) && BringsCell(stop) ? [new([HazardWords.HeatedCell], stop.Operation)] : [];

    // What is done directly after heating is done while it is hot.
    bool IsHot(Stop stop) => Brings(stop, Hazard.HotSurface) || Heat(stop).Any()
        || way.Stops.Any(before => before.Operation.Id == stop.Operation.DirectlyAfter && (Brings(before, Hazard.HotSurface) || Heat(before).Any()));

    bool BringsCell(Stop stop) =>
        Brings(stop, Hazard.LithiumCell) || PartsOf(stop.Taken).Any(part => part.Hazards.Contains(Hazard.LithiumCell));

    static bool Brings(Stop stop, Hazard hazard) => stop.Operation.Hazards.Contains(hazard);

    IEnumerable<Tool> ToolsOf(Stop stop) => record.Tools.Where(tool => stop.Tools.Contains(tool.Id));

    IEnumerable<Part> PartsOf(IEnumerable<string> ids)
    {
        var taken = ids.ToHashSet(StringComparer.Ordinal);
        return record.Parts.Where(part => taken.Contains(part.Id));
    }
}
