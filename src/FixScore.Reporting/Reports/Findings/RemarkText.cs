using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>What the assessor remarks of an entry, and what shows it.</summary>
static class RemarkText
{
    /// <summary>The remark and the evidence; empty when there is neither.</summary>
    public static string Of(TeardownRecord record, RecordEntry entry)
    {
        var shows = string.Join(", ", entry.Evidence.Select(id => RecordTerms.Name(record.Evidence.FirstOrDefault(item => item.Id == id)?.Ref ?? id)));
        return string.Join(" ", new[] { entry.Note is { } note ? RecordTerms.Sentence(note) : "", shows.Length > 0 ? $"Shown by {shows}." : "" }.Where(text => text.Length > 0));
    }
}
