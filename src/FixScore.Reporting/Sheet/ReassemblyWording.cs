using FixScore.Disassembly;

namespace FixScore.Reporting.Sheet;

/// <summary>The way back, in words.</summary>
sealed class ReassemblyWording(SheetPlan plan, RecordTerms terms)
{
    public IEnumerable<SheetLine> Lines =>
        plan.Reassembly.SelectMany(Back).DefaultIfEmpty(new(0, SheetMark.Text, "None.")).Concat(Recorded);

    IEnumerable<SheetLine> Back(SheetReturn each)
    {
        string[] done = [.. Put(each), .. each.Stop.Undone.IsEmpty ? Array.Empty<string>() : [$"close {terms.Joints(each.Stop.Undone)}"]];
        yield return new(0, SheetMark.Tick, $"undo {terms.Number(each.Number)}: {string.Join("; ", done)}{Time(each)}");
        foreach (var renewal in each.Renew) yield return new(1, SheetMark.Text, $"{renewal.Joint.Id}: {RenewalWording.Says(renewal)}");
    }

    IEnumerable<string> Put(SheetReturn each) => each.Stop.Taken.IsEmpty ? [] : [$"put back {terms.Parts(each.Stop.Taken)}"];

    string Time(SheetReturn each) => OperationTime.Known(each.Stop.Operation.ReassemblySeconds) is { } time ? $"; {terms.Seconds(time)}" : "";

    IEnumerable<SheetLine> Recorded => plan.AlsoRecorded.IsEmpty ? [] : plan.AlsoRecorded.Select(operation =>
            new SheetLine(1, SheetMark.Tick, $"{operation.Id}: {RecordTerms.Plainly(operation.Action)}, {terms.Tools(operation.Tools)}{(operation.Caution is { } caution ? $"; {RecordTerms.Sentence(caution)}" : "")}"))
        .Prepend(new(0, SheetMark.Text, "The record also names, for reassembly of the whole device:"));
}
