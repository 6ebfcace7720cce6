using System.Collections.Immutable;
using FixScore.Analysis;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Normalising;

namespace FixScore.Cli.Commands.Compare;

/// <summary>How columns become comparable.</summary>
enum TableScale
{
    /// <summary>0 at #worst, 1 at #best.</summary>
    Goalposts,

    /// <summary>0 for the worst of the units, 1 for the best.</summary>
    Extremes,

    /// <summary>Standard deviations from the mean.</summary>
    ZScore,

    /// <summary>Share of the best unit's value.</summary>
    Leader,

    /// <summary>Units left behind.</summary>
    Ranks,

    /// <summary>As they are.</summary>
    None,
}

/// <summary>Makes the columns of a table comparable.</summary>
static class TableScales
{
    /// <summary>The scale unless one is asked for: goalposts where the table has them.</summary>
    public static TableScale Usual(GivenTable given) => given.HasGoalposts ? TableScale.Goalposts : TableScale.Extremes;

    /// <summary>The table with comparable columns, more being better; or what stands in the way.</summary>
    public static (UnitTable? Table, ImmutableArray<Problem> Problems) Apply(GivenTable given, TableScale scale)
    {
        if (scale == TableScale.Goalposts && Unset(given) is { } problem) return (null, [problem]);
        ImmutableArray<Normalisation> ways = [.. given.Directions.Select((direction, i) => Way(given, scale, direction, i))];
        var problems = Normaliser.ProblemsOf(given.Table, ways);
        return problems.IsEmpty ? (Normaliser.Apply(given.Table, ways), problems) : (null, problems);
    }

    /// <summary>The rules unless some are asked for: the means, and what asks for exact values where all are.</summary>
    public static ImmutableArray<OrderRule> UsualRules(UnitTable table) =>
    [
        OrderRule.Arithmetic,
        .. table.Rows.All(row => row.All(cell => cell.Low >= 0)) ? [OrderRule.Geometric] : Array.Empty<OrderRule>(),
        .. table.IsExact() ? [OrderRule.Borda, OrderRule.Copeland] : Array.Empty<OrderRule>(),
    ];

    static Normalisation Way(GivenTable given, TableScale scale, Direction direction, int column) => scale switch
    {
        TableScale.Goalposts => Normalisation.Goalposts(given.Worst[column]!.Value, given.Best[column]!.Value),
        TableScale.Extremes => Normalisation.OwnExtremes(direction),
        TableScale.ZScore => Normalisation.ZScore(direction),
        TableScale.Leader => Normalisation.ToLeader(direction),
        TableScale.Ranks => Normalisation.Ranks(direction),
        _ => Normalisation.None,
    };

    static Problem? Unset(GivenTable given) =>
        !given.HasGoalposts ? Bad("goalposts-missing", "Goalposts are asked for, and not every column has both.", "Add rows #worst and #best.")
        : given.Worst.Zip(given.Best).Any(posts => posts.First == posts.Second) ? Bad("goalposts-equal", "The goalposts of a column are equal.", "#worst and #best must differ.")
        : null;

    static Problem Bad(string code, string text, string hint) => Problem.Of(Severity.Error, Pointer.Root, code, text, hint);
}
