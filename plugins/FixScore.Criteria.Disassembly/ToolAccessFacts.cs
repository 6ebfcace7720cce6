using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>A tool used on the way, and how easily it can be had.</summary>
sealed record UsedTool(Tool Tool, ImmutableArray<ToolLevel> Possible);

/// <summary>Work judged, the tools used in it in the order of the record, and the operations whose tools are unknown.</summary>
sealed record ToolsOfWork(JudgedWork Work, ImmutableArray<UsedTool> Used, ImmutableArray<Operation> Unknown);

/// <summary>The tools used on the way to a part; with unknown tools for each way it can be.</summary>
sealed record ToolAccessFacts(JudgedWays Judged, ImmutableArray<ToolsOfWork> Works)
{
    public IEnumerable<UsedTool> Used => Works.SelectMany(work => work.Used).DistinctBy(each => each.Tool.Id, StringComparer.Ordinal);

    public IEnumerable<Operation> Unknown => Works.SelectMany(work => work.Unknown).DistinctBy(each => each.Id, StringComparer.Ordinal);

    public static ToolAccessFacts Of(PartContext context)
    {
        var judged = JudgedWays.Of(context);
        return new(judged, [.. judged.All.Select(way => Of(context, JudgedWork.Of(context, way)))]);
    }

    static ToolsOfWork Of(PartContext context, JudgedWork work)
    {
        var used = work.Stops.SelectMany(stop => stop.Tools.AsArray()).ToHashSet(StringComparer.Ordinal);
        return new(
            work,
            [
                .. context.Case.Record.Tools.Where(tool => used.Contains(tool.Id))
                    .Select(tool => new UsedTool(tool, ToolLevels.Of(context.Case, context.Part.Id, tool).Possible())),
            ],
            [.. work.Stops.Where(stop => !stop.Tools.IsRecorded).Select(stop => stop.Operation)]);
    }
}
