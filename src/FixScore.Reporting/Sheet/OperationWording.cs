using FixScore.Disassembly;

namespace FixScore.Reporting.Sheet;

/// <summary>Operations to tick off, in words.</summary>
sealed class OperationWording(SheetPlan plan, RecordTerms terms)
{
    public IEnumerable<SheetLine> Lines =>
        (plan.IsShortest ? [] : new[] { new SheetLine(0, SheetMark.Text, "A good order; whether another takes fewer steps was not proven.") })
            .Concat(plan.Operations.SelectMany(Operation).DefaultIfEmpty(new(0, SheetMark.Text, "None.")));

    IEnumerable<SheetLine> Operation(SheetOperation each)
    {
        var operation = each.Stop.Operation;
        yield return new(0, SheetMark.Tick, $"{terms.Number(each.Number)}. {(each.IsAtOnce ? "At once, before it cools: " : "")}{operation.Id}: {RecordTerms.Plainly(operation.Action)}, {terms.Tools(each.Stop.Tools)}; {terms.Seconds(OperationTime.Of(operation))}{Wait(each)}");
        if (!each.Stop.Undone.IsEmpty) yield return new(1, SheetMark.Text, $"undoes {terms.Joints(each.Stop.Undone)}");
        if (!each.Stop.Taken.IsEmpty) yield return new(1, SheetMark.Text, $"{Verb(each)} {terms.Parts(each.Stop.Taken)}");
        if (!operation.Damages.IsEmpty) yield return new(1, SheetMark.Mind, $"damages {Things(operation.Damages)}");
        if (operation.Hazards.Count > 0) yield return new(1, SheetMark.Mind, $"hazards: {string.Join(", ", operation.Hazards.Select(RecordTerms.Plainly))}");
        if (operation.Caution is { } caution) yield return new(1, SheetMark.Mind, RecordTerms.Sentence(caution));
    }

    string Wait(SheetOperation each) => each.Stop.Operation.WaitSeconds is { } wait && wait != 0 ? $", waiting {terms.Amount(wait, " s")} of it" : "";

    string Things(IEnumerable<string> ids) => string.Join(", ", ids.Select(id => plan.Record.Parts.Any(part => part.Id == id) ? terms.Part(id) : id));

    static string Verb(SheetOperation each) => (each.Stop.Operation.Removes.IsEmpty, each.Stop.Operation.Moves.IsEmpty) switch
    {
        (false, true) => "takes out",
        (true, false) => "shifts aside",
        _ => "takes out or shifts aside",
    };
}
