using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>A record whose operations are the nodes of an AND/OR precedence graph; each undoes the joint that holds a part of its own.</summary>
/// <remarks>The part of operation <c>x</c> is <c>part-x</c>. Nothing is removed, so that only a change of tool ends a step.</remarks>
sealed class PrecedenceGraph
{
    readonly RecordBuilder builder = new RecordBuilder().Part("base");
    readonly HashSet<string> tools = [];

    /// <summary>Adds an operation.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="time">What it costs.</param>
    /// <param name="tool">Its tool.</param>
    /// <param name="all">What must be done before.</param>
    /// <param name="any">Of each of these, one must be done before.</param>
    public PrecedenceGraph Add(string id, int time, string? tool = null, string[]? all = null, params string[][] any)
    {
        if (tool is not null && tools.Add(tool)) builder.Tool(tool, ToolClass.Basic);
        builder.Part($"part-{id}").Joint($"joint-{id}", [$"part-{id}", "base"], JointKind.Other).Operation(
            id, OperationAction.Other, tool is null ? [] : [tool], [$"joint-{id}"],
            after: [.. Done(all ?? []), .. any.Select(ways => new Condition.AnyOf([.. Done(ways)]))], seconds: time);
        return this;
    }

    /// <summary>Adds a part that any of several operations frees.</summary>
    public PrecedenceGraph Goal(string part, params string[] operations)
    {
        builder.Part(part).Joint($"joint-{part}", [part, "base"], JointKind.Other).With(record => record with
        {
            Operations =
            [
                .. record.Operations.Select(operation => operations.Contains(operation.Id)
                    ? operation with { Undoes = operation.Undoes.Add($"joint-{part}") } : operation),
            ],
        });
        return this;
    }

    static IEnumerable<Condition> Done(string[] operations) => operations.Select(each => new Condition.Done(each));

    public TeardownRecord Build() => builder.Build();
}
