using System.Collections.Immutable;

namespace FixScore.Criteria.Documentation;

/// <summary>How well the subjects a repairer needs are documented: for whom, at what cost, for how long.</summary>
/// <remarks>
/// <para>Each subject has the points of its best document, lowest + (points of the audience - lowest) x cost factor x years
/// factor; the score is their mean. More is better. The years factor is years / <c>yearsWanted</c>, at most 1. A document
/// about some parts only counts like one about the whole device; the reason names the parts.</para>
/// <para>What is unknown of a document gives the range of all it can be. A subject not listed in a list that has entries
/// may have any points; an empty list says that there are no documents, which is the lowest; without a list the answer is
/// unknown. No subjects asked for: not applicable.</para>
/// <para>Source: the kinds of information follow Annex II of Regulation (EU) 2023/1670; points and factors are own
/// judgement. Thread safe.</para>
/// </remarks>
public sealed class DocumentationCriterion : IDeviceCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "documentation", 1, "Documentation", "mean over subjects of audience, cost and years of the best document", "share",
        Direction.MoreIsBetter,
        "Subjects: after Regulation (EU) 2023/1670 Annex II; points and factors: own judgement, no source",
        ["documentation[].subject", "documentation[].audience", "documentation[].cost", "documentation[].years", "documentation[].parts"],
        DocumentationOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        var facts = DocumentationFacts.Of(context.Case.Record.Documentation, context.Get(DocumentationOptions.Subjects));
        if (facts.Subjects.IsEmpty) return Outcome.NotApplicable(DocumentationReasons.NothingAsked());
        if (!facts.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "documentation"));
        if (facts.IsEmpty) return Outcome.Scored(context.Scale.Min, DocumentationReasons.NoDocuments(context.Scale.Min));
        ImmutableArray<JudgedSubject> subjects = [.. facts.Subjects.Select(new SubjectPoints(context).Of)];
        var reasons = new DocumentationReasons(context.Case);
        return Outcome.Scored(Mean(subjects), [.. subjects.Select(reasons.Of)]) with { Missing = [.. subjects.SelectMany(reasons.Missing)] };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => DocumentationChanges.Of(context);

    static Interval Mean(ImmutableArray<JudgedSubject> subjects) => new(
        subjects.Sum(subject => subject.Points.Low) / subjects.Length,
        subjects.Sum(subject => subject.Points.High) / subjects.Length);
}
