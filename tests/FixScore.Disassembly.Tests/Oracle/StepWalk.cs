using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>Tools nobody named: bare hands at the least, one tool of its own at the most.</summary>
enum UnknownTools
{
    Least,
    Most,
}

/// <summary>Steps, counted along a sequence word by word. Tools are a bit mask.</summary>
/// <param name="InHand">Tools in hand.</param>
/// <param name="IsOpen">Whether a step is open.</param>
readonly record struct Bench(int InHand, bool IsOpen);

/// <summary>How steps are counted.</summary>
sealed class StepWalk
{
    const int FirstOwnTool = 16;
    readonly FirstTool firstTool;
    readonly int hot;
    readonly Operation[] operations;
    readonly int[][] choices;

    public StepWalk(TeardownRecord record, FirstTool firstTool, UnknownTools unknown)
    {
        this.firstTool = firstTool;
        Tool[] tools = [.. record.Tools];
        hot = tools.MaskOf(tool => tool.HeatC is not null);
        operations = [.. record.Operations];
        choices =
        [
            .. operations.Select((operation, i) => operation.OrTools.Select(others => Mask(others))
                .Prepend(operation.Tools.IsRecorded ? Mask(operation.Tools) : unknown == UnknownTools.Least ? 0 : 1 << FirstOwnTool + i).ToArray()),
        ];

        int Mask(IEnumerable<string> ids) => tools.MaskOf(tool => ids.Contains(tool.Id));
    }

    /// <summary>The sets of tools an operation can be done with.</summary>
    public int[] Choices(int operation) => choices[operation];

    public (Bench After, decimal Steps) Do(Bench bench, int operation, int used)
    {
        var entry = operations[operation];
        var heatOrCleaning = entry.Action is OperationAction.Heat or OperationAction.Clean or OperationAction.RemoveResidue || used.Meets(hot);
        var takenUp = used & ~bench.InHand;
        var steps = 0;
        if (!bench.IsOpen || heatOrCleaning)
            steps = Math.Max(1, int.PopCount(used));
        else if (bench.InHand != 0 && takenUp != 0)
            steps = int.PopCount(takenUp);
        else if (bench.InHand == 0 && (int.PopCount(used) > 1 || (used != 0 && firstTool == FirstTool.Change)))
            steps = int.PopCount(takenUp) - (firstTool == FirstTool.NoChange ? 1 : 0);
        var ended = heatOrCleaning || !entry.Removes.IsEmpty || !entry.Moves.IsEmpty;
        return (new(used != 0 ? used : bench.InHand, !ended), steps);
    }
}
