using FixScore.Disassembly.Model;
using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>Texts for recorded sequences that are impossible.</summary>
static class SequenceProblems
{
    public static Problem Of(TeardownCase source, Sequence sequence, SequenceFault fault)
    {
        var at = source.At(sequence).Child("operations");
        return fault.Kind == SequenceFaultKind.NotFree
            ? Problem.Of(
                Severity.Error, at, "sequence-leaves-part-held", "After the sequence '{sequence}' the part '{part}' is not free: {missing}.",
                "Add what is missing at the end, or name another part.",
                ("sequence", sequence.Id), ("part", sequence.Part), ("missing", WantText.NotYet(fault.Lacking[0])))
            : Problem.Of(
                Severity.Error, at.Child(fault.Place), Code(fault.Kind), Template(fault.Kind), "Mend the order, or the conditions of the operation.",
                ("operation", sequence.Operations[fault.Place]), ("sequence", sequence.Id),
                ("missing", fault.Lacking.IsEmpty ? "" : WantText.NotYet(fault.Lacking[0])));
    }

    static string Code(SequenceFaultKind kind) => kind switch
    {
        SequenceFaultKind.Twice => "sequence-operation-twice",
        SequenceFaultKind.RemovesAgain => "sequence-removes-twice",
        _ => "sequence-impossible",
    };

    static string Template(SequenceFaultKind kind) => kind switch
    {
        SequenceFaultKind.NotDisassembly => "In the sequence '{sequence}', '{operation}' puts together; a way to a part only takes apart.",
        SequenceFaultKind.Twice => "'{operation}' stands twice in the sequence '{sequence}'.",
        SequenceFaultKind.RemovesAgain => "In the sequence '{sequence}', '{operation}' removes again what is gone already.",
        SequenceFaultKind.NotDirectlyAfter => "In the sequence '{sequence}', '{operation}' does not come directly after what it must follow.",
        _ => "In the sequence '{sequence}', '{operation}' cannot be done there: {missing}.",
    };
}
