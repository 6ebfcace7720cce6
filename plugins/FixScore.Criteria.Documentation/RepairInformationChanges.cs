using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>Design changes for <see cref="RepairInformationCriterion"/>: all subjects for professional repairers, or for everyone, at no cost.</summary>
/// <remarks>One change for all subjects: the worst of them counts, so that a single one is worth nothing.</remarks>
static class RepairInformationChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var facts = RepairInformationFacts.Of(
            context.Case.Record.Documentation, context.Get(RepairInformationOptions.Subjects), context.Get(RepairInformationOptions.BoardSubjects));
        if (facts.Subjects.IsEmpty) return [];
        return new[]
        {
            Publish(context, facts, InformationAccess.ProfessionalsFree, Audience.Repairers, "professional repairers"),
            Publish(context, facts, InformationAccess.PublicFree, Audience.Public, "everyone"),
        }.OfType<DesignChange>();
    }

    static DesignChange? Publish(DeviceContext context, RepairInformationFacts facts, InformationAccess wanted, Audience audience, string whom)
    {
        InformedSubject[] short_ = [.. facts.Subjects.Where(subject => (facts.IsEmpty ? InformationAccess.None : subject.Access[0]) < wanted)];
        if (short_.Length == 0) return null;
        var patch = short_.Aggregate(facts.IsRecorded ? DesignPatch.Empty : DesignPatch.Empty.Set(Pointer.Root, "documentation", new JsonArray()),
            (all, subject) => all.Then(Publish(context, subject, audience)));
        return patch.As($"publish-to-{Word.Of(audience)}", Reason.Of(
            "publish-information", "Give {whom} all repair information at no cost; it is short of that on {subjects}.",
            short_.SelectMany(subject => subject.Documents).Select(context.Case.At), ("whom", whom), ("subjects", string.Join(", ", short_.Select(subject => subject.Subject)))));
    }

    static DesignPatch Publish(DeviceContext context, InformedSubject subject, Audience audience)
    {
        var first = subject.Subject.Split("-or-")[0];
        var whom = context.Get(RepairInformationOptions.BoardSubjects).Contains(first) ? Audience.Repairers : audience;
        return subject.Documents.FirstOrDefault(document => document.Parts.IsEmpty) is { } general
            ? PublicDocument.Change(context.Case, general, whom, null)
            : DesignPatch.Empty.Append(PublicDocument.List, PublicDocument.Of(first, whom, null));
    }
}
