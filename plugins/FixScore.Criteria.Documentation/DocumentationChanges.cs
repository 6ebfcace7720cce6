using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>Design changes for <see cref="DocumentationCriterion"/>: a subject published to everyone at no cost, for as long as is wanted.</summary>
static class DocumentationChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var facts = DocumentationFacts.Of(context.Case.Record.Documentation, context.Get(DocumentationOptions.Subjects));
        if (!facts.IsRecorded || facts.IsEmpty) return facts.Subjects.IsEmpty ? [] : [All(context, facts)];
        return facts.Subjects.Where(subject => new SubjectPoints(context).Of(subject).Points.Low < context.Scale.Max)
            .Where(subject => Word.TryParse<DocumentSubject>(subject.Subject, out _)).Select(subject => Publish(context, subject));
    }

    static DesignChange Publish(DeviceContext context, DocumentedSubject subject)
    {
        var best = new SubjectPoints(context).Of(subject).Best;
        var patch = best is null
            ? DesignPatch.Empty.Append(PublicDocument.List, PublicDocument.Of(subject.Subject, Audience.Public, Years(context)))
            : PublicDocument.Change(context.Case, best, Audience.Public, Years(context));
        return patch.As($"publish-{subject.Subject}", Reason.Of(
            "publish-subject", "Publish {subject} to everyone at no cost, for {years} years.",
            best is null ? [PublicDocument.List] : [context.Case.At(best)], ("subject", subject.Subject), ("years", Years(context))));
    }

    // Where no list was recorded, one entry by itself would leave all others as open as they are.
    static DesignChange All(DeviceContext context, DocumentationFacts facts) => DesignPatch.Empty
        .Set(Pointer.Root, "documentation", new JsonArray([.. facts.Subjects.Where(subject => Word.TryParse<DocumentSubject>(subject.Subject, out _))
            .Select(subject => PublicDocument.Of(subject.Subject, Audience.Public, Years(context)))]))
        .As("publish-all", Reason.Of(
            "publish-all", "Publish all {subjects} subjects to everyone at no cost, for {years} years.", [],
            ("subjects", facts.Subjects.Length), ("years", Years(context))));

    static decimal Years(DeviceContext context) => context.Get(DocumentationOptions.YearsWanted);
}
