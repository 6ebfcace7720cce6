namespace FixScore.Records;

/// <summary>Who assessed what, when, on which units.</summary>
public sealed record Assessment
{
    /// <summary>Who assessed it: a workshop or a role.</summary>
    public required string Assessor { get; init; }

    /// <summary>The day of the assessment.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The units: two identical devices as a rule, and loose spares used in trials.</summary>
    public required EntryList<AssessedUnit> Units { get; init; }
}

/// <summary>One specimen on the bench.</summary>
public sealed record AssessedUnit : NamedEntry
{
    /// <summary>The regional version; units of different codes are not comparable.</summary>
    public string? ModelCode { get; init; }

    /// <summary>The software it ran.</summary>
    public string? Software { get; init; }

    /// <summary>What it is; not observed means unknown.</summary>
    public OneOf<UnitSource> Source { get; init; }
}
