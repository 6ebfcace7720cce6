using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Every id that is named exists and is of the right kind.</summary>
static class ReferenceCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record) =>
        References.Of(record.Record)
            .Where(reference => reference.Id.Length > 0 && (record.KindOf(reference.Id) & reference.Wanted) == 0)
            .Where(reference => reference.Member != "suppliedWith" || reference.Id != Tool.Product)
            .Select(reference => Dangling(record, reference));

    static Problem Dangling(CheckedRecord record, Reference reference)
    {
        var wanted = reference.Wanted == Named.Anything ? "entry" : reference.Wanted.ToString().ToLowerInvariant().Replace(", ", " or ", StringComparison.Ordinal);
        var near = Suggestion.For(reference.Id, record.IdsOf(reference.Wanted));
        return Problem.Of(Severity.Error, reference.At(record), "id-unknown", "There is no {wanted} '{id}' in this record.",
            near is null ? "Add the entry, or correct the id." : $"Did you mean '{near}'?", ("wanted", wanted), ("id", reference.Id));
    }
}
