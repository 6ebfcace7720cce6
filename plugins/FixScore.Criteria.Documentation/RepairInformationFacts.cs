using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>A subject that is asked for, and who gets it at what cost.</summary>
/// <param name="Subject">The subject as the profile writes it.</param>
/// <param name="Documents">Its documents, in the order of the record; empty when none is listed.</param>
/// <param name="Access">All that is possible.</param>
sealed record InformedSubject(string Subject, ImmutableArray<Document> Documents, ImmutableArray<InformationAccess> Access);

/// <summary>The repair information of a device, subject by subject.</summary>
/// <param name="Subjects">The subjects asked for, each once, in the order of the profile.</param>
/// <param name="IsRecorded">Whether documents were looked for.</param>
/// <param name="IsEmpty">Whether the record says that there are none.</param>
sealed record RepairInformationFacts(ImmutableArray<InformedSubject> Subjects, bool IsRecorded, bool IsEmpty)
{
    const string Or = "-or-";

    /// <summary>All that is possible of the worst subject.</summary>
    public ImmutableArray<InformationAccess> Access => PossibleAccess.Worst([.. Subjects.Select(subject => subject.Access)]);

    public static RepairInformationFacts Of(EntryList<Document> documents, ImmutableArray<string> subjects, ImmutableArray<string> boardSubjects) => new(
        [.. subjects.Distinct(StringComparer.Ordinal).Select(subject => SubjectOf(subject, documents, boardSubjects))],
        documents.IsRecorded,
        documents is { IsRecorded: true, Count: 0 });

    static InformedSubject SubjectOf(string subject, EntryList<Document> documents, ImmutableArray<string> boardSubjects)
    {
        var either = subject.Split(Or, StringSplitOptions.None);
        ImmutableArray<Document> listed = [.. documents.Where(document => either.Contains(Word.Of(document.Subject)))];
        return new(subject, listed, listed.IsEmpty ? PossibleAccess.Any : PossibleAccess.Worst([.. Scopes(listed).Select(Best)]));

        ImmutableArray<InformationAccess> Best(IEnumerable<Document> scope) => PossibleAccess.Best([.. scope.Select(Of)]);

        ImmutableArray<InformationAccess> Of(Document document) => boardSubjects.Contains(Word.Of(document.Subject))
            ? PossibleAccess.FreeIsEnough(PossibleAccess.Of(document))
            : PossibleAccess.Of(document);
    }

    // What has to be covered: the whole device where documents are about it, else each part that one names.
    static IEnumerable<IEnumerable<Document>> Scopes(ImmutableArray<Document> documents)
    {
        if (documents.Any(document => document.Parts.IsEmpty)) return [documents.Where(document => document.Parts.IsEmpty)];
        return documents.SelectMany(document => document.Parts).Distinct(StringComparer.Ordinal)
            .Select(part => documents.Where(document => document.Parts.Contains(part)));
    }
}
