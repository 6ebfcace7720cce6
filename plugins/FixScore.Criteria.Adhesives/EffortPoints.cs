using System.Collections.Immutable;

namespace FixScore.Criteria.Adhesives;

/// <summary>Points of an effort, and the acts that decide them.</summary>
readonly record struct JudgedEffort(Interval Points, ImmutableArray<Effort.Act> By);

/// <summary>Turns efforts into points: the harshest of what is needed together, the gentlest of what is free to choose.</summary>
sealed class EffortPoints(CriterionContext context)
{
    public JudgedEffort Of(Effort effort) => effort switch
    {
        Effort.Act act => new(Points(act), [act]),
        Effort.Together together => Harshest(together.Items),
        Effort.Choice choice => Gentlest(choice.Items),
        Effort.Unclear unclear => AnyOf(unclear.Items),
        _ => throw new ArgumentOutOfRangeException(nameof(effort)),
    };

    Interval Points(Effort.Act act)
    {
        if (act.Means != Means.Heat) return context.Points(AdhesiveStrengthOptions.Means, Word.Of(act.Means));
        if (act.HeatC is { } heat) return context.Points(AdhesiveStrengthOptions.HeatBands, heat);
        return context.Points(AdhesiveStrengthOptions.Means, Word.Of(Means.Heat))
            .Hull(context.Points(AdhesiveStrengthOptions.HeatBands, new Interval(-Bond.Unlimited, Bond.Unlimited)));
    }

    JudgedEffort Harshest(ImmutableArray<Effort> items)
    {
        if (items.IsEmpty) return new(context.Scale.Max, []);
        JudgedEffort[] judged = [.. items.Select(Of).OrderBy(each => each.Points.Low).ThenBy(each => each.Points.High)];
        return new(new(judged[0].Points.Low, judged.Min(each => each.Points.High)), judged[0].By);
    }

    JudgedEffort Gentlest(ImmutableArray<Effort> items)
    {
        JudgedEffort[] judged = [.. items.Select(Of).OrderByDescending(each => each.Points.Low).ThenByDescending(each => each.Points.High)];
        return new(new(judged[0].Points.Low, judged.Max(each => each.Points.High)), judged[0].By);
    }

    JudgedEffort AnyOf(ImmutableArray<Effort> items)
    {
        JudgedEffort[] judged = [.. items.Select(Of)];
        return new(Interval.HullOf(judged.Select(each => each.Points))!.Value, [.. judged.SelectMany(each => each.By).Distinct()]);
    }
}
