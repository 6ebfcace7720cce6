using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>What <see cref="DocumentationCriterion"/> says: one reason for each subject, with its points.</summary>
sealed class DocumentationReasons(TeardownCase source)
{
    public static Reason NothingAsked() => Reason.Of("no-subjects", "The profile asks for no subject.", []);

    public static Reason NoDocuments(decimal points) =>
        Reason.Of("no-documents", "The record says that there are no documents.", [Pointer.Root.Child("documentation")]) with { Points = points };

    public Reason Of(JudgedSubject judged) => ReasonOf(judged) with { Points = judged.Points };

    public IEnumerable<Missing> Missing(JudgedSubject judged)
    {
        if (judged.Best is null) return [new(Pointer.Root.Child("documentation"), judged.Subject.Subject)];
        return judged.Points.IsExact ? [] : judged.Subject.Documents.SelectMany(Open);
    }

    Reason ReasonOf(JudgedSubject judged)
    {
        var at = judged.Subject.Documents.Select(source.At);
        var subject = judged.Subject.Subject;
        if (judged.Best is not { } best)
            return Reason.Of("subject-not-listed", "{subject}: no document is listed, so nothing is known.", at, ("subject", subject));
        return best.Parts.IsEmpty
            ? Reason.Of("subject", "{subject}: audience {audience}, cost {cost}, for {years}.", at, Values(subject, best))
            : Reason.Of("subject-of-parts", "{subject}: audience {audience}, cost {cost}, for {years}; about {parts} only.", at,
                [.. Values(subject, best), ("parts", string.Join(", ", best.Parts))]);
    }

    IEnumerable<Missing> Open(Document document)
    {
        var at = source.At(document);
        if (!document.Audience.IsExact) yield return new(at, "audience");
        if (!document.Cost.IsExact) yield return new(at, "cost");
        if (document.Years?.IsExact != true) yield return new(at, "years");
    }

    static (string, Value)[] Values(string subject, Document best) =>
    [
        ("subject", subject),
        ("audience", Shown(best.Audience.Stated)),
        ("cost", Shown(best.Cost.Stated)),
        ("years", Years(best.Years)),
    ];

    static Value Shown<T>(ImmutableArray<T> words) where T : struct, Enum =>
        words.IsEmpty ? "unknown" : string.Join(" or ", words.Select(Word.Of));

    static Value Years(Quantity? years) => years switch
    {
        null => "unknown years",
        { Min: { } min, Max: { } max } => Value.Of(new Interval(min, max), "years"),
        { } open => $"{open} years",
    };
}
