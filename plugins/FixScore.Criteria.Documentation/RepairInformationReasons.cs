using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>What <see cref="RepairInformationCriterion"/> says: the level of all, and one reason for each subject.</summary>
sealed class RepairInformationReasons(DeviceContext context)
{
    static readonly Pointer List = Pointer.Root.Child("documentation");

    public static Reason NothingAsked() => Reason.Of("no-subjects", "The profile asks for no subject.", []);

    public Reason NoDocuments() => Reason.Of("no-documents", "The record says that there are no documents.", [List])
        with { Points = PointsOf([InformationAccess.None]) };

    public Reason Level(RepairInformationFacts facts) => Reason.Of(
        "information-level", "All {subjects} subjects together: {access}.", [List],
        ("subjects", facts.Subjects.Length), ("access", Shown(facts.Access))) with { Points = PointsOf(facts.Access) };

    public Reason Of(InformedSubject subject)
    {
        var at = subject.Documents.Select(context.Case.At);
        string[] parts = [.. subject.Documents.SelectMany(document => document.Parts).Distinct(StringComparer.Ordinal)];
        if (subject.Documents.IsEmpty)
            return Reason.Of("subject-not-listed", "{subject}: no document is listed, so nothing is known.", at, ("subject", subject.Subject));
        return subject.Documents.Any(document => document.Parts.IsEmpty)
            ? Reason.Of("subject-access", "{subject}: {access}.", at, ("subject", subject.Subject), ("access", Shown(subject.Access)))
            : Reason.Of("subject-access-of-parts", "{subject}: {access}, for {parts} only.", at,
                ("subject", subject.Subject), ("access", Shown(subject.Access)), ("parts", string.Join(", ", parts)));
    }

    public IEnumerable<Missing> Missing(InformedSubject subject)
    {
        if (subject.Documents.IsEmpty) return [new(List, subject.Subject)];
        return subject.Access.Length == 1 ? [] : subject.Documents.SelectMany(Open);
    }

    public Interval PointsOf(ImmutableArray<InformationAccess> access) => context.Points(RepairInformationOptions.Levels, access.Select(Word.Of));

    IEnumerable<Missing> Open(Document document)
    {
        var at = context.Case.At(document);
        if (!document.Audience.IsExact) yield return new(at, "audience");
        if (!document.Cost.IsExact) yield return new(at, "cost");
    }

    static string Shown(ImmutableArray<InformationAccess> access) => string.Join(" or ", access.Select(Word.Of));
}
