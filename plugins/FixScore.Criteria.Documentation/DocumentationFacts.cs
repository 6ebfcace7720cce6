using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>A subject that is asked for, and what is recorded about it.</summary>
/// <param name="Subject">The subject.</param>
/// <param name="Documents">Its documents, in the order of the record; empty when none is listed.</param>
sealed record DocumentedSubject(string Subject, ImmutableArray<Document> Documents);

/// <summary>The documents of a device, subject by subject.</summary>
/// <param name="Subjects">The subjects asked for, each once, in the order of the profile.</param>
/// <param name="IsRecorded">Whether documents were looked for.</param>
/// <param name="IsEmpty">Whether the record says that there are none.</param>
sealed record DocumentationFacts(ImmutableArray<DocumentedSubject> Subjects, bool IsRecorded, bool IsEmpty)
{
    public static DocumentationFacts Of(EntryList<Document> documents, ImmutableArray<string> subjects) => new(
        [
            .. subjects.Distinct(StringComparer.Ordinal).Select(subject =>
                new DocumentedSubject(subject, [.. documents.Where(document => Word.Of(document.Subject) == subject)])),
        ],
        documents.IsRecorded,
        documents is { IsRecorded: true, Count: 0 });
}
