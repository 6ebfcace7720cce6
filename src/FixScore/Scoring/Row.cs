using System.Collections.Immutable;

namespace FixScore.Scoring;

/// <summary>How the value of a row comes about.</summary>
enum RowRule
{
    /// <summary>From an outcome, or fixed.</summary>
    Given,

    /// <summary>From its children, as <see cref="Row.Aggregate"/> says.</summary>
    Aggregate,

    /// <summary>The lowest of several parts of one role.</summary>
    Lowest,

    /// <summary>The mean of several parts of one role.</summary>
    Mean,

    /// <summary>All that its children can be: it is not known which of them holds.</summary>
    Hull,
}

/// <summary>Whether a row counts.</summary>
enum RowState
{
    Counts,
    SkippedAsUnknown,
    SkippedAsNotApplicable,
}

/// <summary>One line of a score: a node of the profile, or what <c>over</c> makes of it for a role or a part.</summary>
sealed class Row(ProfileNode node, string path, string title, decimal? weight, RowRule rule)
{
    public ProfileNode Node { get; } = node;

    public string Path { get; } = path;

    public string Title { get; } = title;

    /// <summary>Weight among the siblings; <c>null</c> where there is none.</summary>
    public decimal? Weight { get; } = weight;

    public RowRule Rule { get; } = rule;

    /// <summary>How <see cref="RowRule.Aggregate"/> adds up.</summary>
    public Aggregate Aggregate { get; init; }

    /// <summary>The role this row, or what is above it, stands for; <c>null</c> for none.</summary>
    public string? Role { get; init; }

    /// <summary>Rounding of the value, on the row that stands for the whole node.</summary>
    public Carry? Carry { get; init; }

    /// <summary>Whether it is left out of what is above it, because only gates look at it.</summary>
    public bool GateOnly { get; init; }

    public Row? Parent { get; private set; }

    public List<Row> Children { get; } = [];

    public RowState State { get; set; }

    public Interval Value { get; set; }

    /// <summary>Whether the value rests on a full observation.</summary>
    public bool IsKnown { get; init; } = true;

    public bool IsFaulted { get; init; }

    public ImmutableArray<ScoreReason> Reasons { get; init; } = [];

    public ImmutableArray<Missing> Missing { get; init; } = [];

    /// <summary>Options in force, on the row that stands for a whole leaf.</summary>
    public OptionValues? Options { get; init; }

    public Row Add(Row child)
    {
        child.Parent = this;
        Children.Add(child);
        return child;
    }

    public IEnumerable<Row> SelfAndBelow() => Children.SelectMany(child => child.SelfAndBelow()).Prepend(this);
}
