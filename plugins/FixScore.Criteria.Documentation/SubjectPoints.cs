using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>A subject with its points.</summary>
/// <param name="Subject">The subject.</param>
/// <param name="Points">Its points.</param>
/// <param name="Best">The document they come from; <c>null</c> when none is listed.</param>
sealed record JudgedSubject(DocumentedSubject Subject, Interval Points, Document? Best);

/// <summary>Points of a subject: those of its best document, lowest + (points of the audience - lowest) x cost factor x years factor.</summary>
sealed class SubjectPoints(CriterionContext context)
{
    /// <summary>The low end is the best that is sure, the high end the best that is possible.</summary>
    public JudgedSubject Of(DocumentedSubject subject)
    {
        if (subject.Documents.IsEmpty) return new(subject, context.Scale.Whole, null);
        (Document Document, Interval Points)[] judged = [.. subject.Documents.Select(document => (document, Of(document)))
            .OrderByDescending(each => each.Item2.Low).ThenByDescending(each => each.Item2.High)];
        return new(subject, new(judged[0].Points.Low, judged.Max(each => each.Points.High)), judged[0].Document);
    }

    Interval Of(Document document)
    {
        var audience = context.Points(DocumentationOptions.Audience, document.Audience.Possible().Select(Word.Of));
        var (cost, years, lowest) = (CostFactor(document), YearsFactor(document), context.Scale.Min);
        return new(
            lowest + (audience.Low - lowest) * cost.Low * years.Low,
            lowest + (audience.High - lowest) * cost.High * years.High);
    }

    Interval CostFactor(Document document) =>
        Interval.HullOf(document.Cost.Possible().Select(cost => (Interval)FactorOf(cost)))!.Value;

    decimal FactorOf(DocumentCost cost) => cost switch
    {
        DocumentCost.ReasonableFee => context.Get(DocumentationOptions.ReasonableFeeFactor),
        DocumentCost.Fee => context.Get(DocumentationOptions.FeeFactor),
        _ => 1,
    };

    Interval YearsFactor(Document document)
    {
        var wanted = context.Get(DocumentationOptions.YearsWanted);
        if (wanted == 0) return 1m;
        var years = (document.Years ?? default).Within(0, wanted);
        return new(Math.Min(1, years.Low / wanted), Math.Min(1, years.High / wanted));
    }
}
