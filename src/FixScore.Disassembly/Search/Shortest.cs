using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>The cheapest way under one price, and what is proven of it.</summary>
/// <param name="Works">The operations in order, by number among all; <c>null</c> when no way was found.</param>
/// <param name="Bound">No way costs less, damage apart.</param>
/// <param name="IsProven">Whether that is the cost of the way found, or that there is none.</param>
sealed record Shortest(int[]? Works, Int128 Bound, bool IsProven)
{
    /// <summary>Solves a question under a price.</summary>
    /// <param name="plan">The question.</param>
    /// <param name="pricing">Makes the price.</param>
    /// <param name="harming">Makes what damage weighs.</param>
    /// <param name="effort">The most states to open; as many again to settle ties.</param>
    /// <param name="cancellation">Cancels it.</param>
    public static Shortest Of(Plan plan, Func<Landmarks, Price> pricing, Func<Price, Harm> harming, int effort, CancellationToken cancellation)
    {
        effort = Allowed(plan, effort);
        var landmarks = Landmarks.Of(plan);
        var price = pricing(landmarks);
        var finder = new Finder(plan, price, landmarks, harming(price), cancellation);
        var answer = finder.From(finder.Start, null, new(effort));
        if (answer.Best is { } best) return new(Numbered(plan, FirstInRecord.Of(finder, price, best, new(effort))), answer.Bound.Cost, true);
        if (answer.IsProven) return new(null, 0, true);
        var some = finder.Quick(new(Math.Max(effort, plan.Works.Length * 4)));
        return new(some is null ? null : Numbered(plan, [.. some.Moves.Select(Moves.Work)]), answer.Bound.Cost, some is not null && some.Paid.Cost == answer.Bound.Cost);
    }

    // A state costs about the square of the operations that are left to choose from, and so many parts are asked for as there are more of them.
    static int Allowed(Plan plan, int effort)
    {
        var operations = plan.Works.Length;
        return operations <= RouteQuery.UsualOperations ? effort : (int)Math.Max(1, (decimal)effort * Cube(RouteQuery.UsualOperations) / Cube(operations));
    }

    static decimal Cube(decimal number) => number * number * number;

    static int[] Numbered(Plan plan, int[] works) => [.. works.Select(work => plan.Original[work])];
}
