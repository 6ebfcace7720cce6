using FixScore.Records;

namespace FixScore.Checks;

/// <summary>An id is unique in the whole record, and <c>product</c> is taken.</summary>
static class IdCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record)
    {
        foreach (var entry in record.NamedEntries().Where(entry => entry.Id.Length > 0))
        {
            if (entry.Id == Tool.Product)
                yield return Problem.Of(Severity.Error, record.At(entry).Child("id"), "id-reserved", "'{id}' stands for the whole product.", "Choose another id.", ("id", entry.Id));
            else if (record.Find<NamedEntry>(entry.Id) is { } first && !ReferenceEquals(first, entry))
                yield return Problem.Of(Severity.Error, record.At(entry).Child("id"), "id-twice", "'{id}' is the id of another entry: {first}.", "Give each entry an id of its own.",
                    ("id", entry.Id), ("first", record.At(first).Text));
        }
    }
}
