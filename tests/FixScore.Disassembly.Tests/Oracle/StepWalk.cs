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
sealed class StepWalk(TeardownRecord record, FirstTool firstTool, UnknownTools unknown)
{
    const int FirstOwnTool = 16;
    readonly Tool[] tools = [.. record.Tools];
    readonly int hot = record.Tools.AsArray().MaskOf(tool => tool.HeatC is not null);
    readonly Operation[] operations = [.. record.Operations];

    /// <summary>The sets of tools an operation can be done with.</summary>
    public IEnumerable<int> Choices(int operation)
    {
        var entry = operations[operation];
        yield return entry.Tools.IsRecorded ? Mask(entry.Tools) : unknown == UnknownTools.Least ? 0 : 1 << FirstOwnTool + operation;
        foreach (var others in entry.OrTools) yield return Mask(others);
    }

    public (Bench After, int Steps) Do(Bench bench, int operation, int used)
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

    int Mask(IEnumerable<string> ids) => tools.MaskOf(tool => ids.Contains(tool.Id));
}
