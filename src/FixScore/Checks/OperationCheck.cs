using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Slips in operations and sequences that show without following a route.</summary>
static class OperationCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record) => Heat(record).Concat(Repeats(record));

    // Heat cools: what it softens is to be opened at once.
    static IEnumerable<Problem> Heat(CheckedRecord record)
    {
        var followed = record.Record.Operations.Select(operation => operation.DirectlyAfter).ToHashSet(StringComparer.Ordinal);
        return from operation in record.Record.Operations
               where operation.Action == OperationAction.Heat && operation.Phase == OperationPhase.Disassembly && !followed.Contains(operation.Id)
               select Problem.Of(Severity.Warning, record.At(operation), "heat-not-followed",
                   "No operation follows '{operation}' directly, so its heat may be gone.", "Name it in 'directlyAfter' of what must come next.", ("operation", operation.Id));
    }

    static IEnumerable<Problem> Repeats(CheckedRecord record) =>
        from sequence in record.Record.Sequences
        let twice = sequence.Operations.GroupBy(id => id, StringComparer.Ordinal).FirstOrDefault(same => same.Skip(1).Any())
        where twice is not null
        select Problem.Of(Severity.Error, record.At(sequence).Child("operations"), "sequence-operation-twice",
            "'{operation}' stands twice in the sequence '{sequence}'.", "Each operation can be done once; record a second way as another operation.",
            ("operation", twice.Key), ("sequence", sequence.Id));
}
