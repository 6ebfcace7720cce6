using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>A part of the device.</summary>
public sealed record Part : NamedEntry
{
    /// <summary>What the part does, as a slug; <see cref="Roles"/> lists those with a meaning.</summary>
    public required string Role { get; init; }

    /// <summary>The name people read; <c>null</c> when there is none but the id.</summary>
    public string? Name { get; init; }

    /// <summary>Id of the part it rides on and comes along with.</summary>
    public string? On { get; init; }

    /// <summary>Whether it cannot carry a code. Default: by role, see <see cref="Roles.IsInert"/>.</summary>
    public bool Inert { get; init; }

    /// <summary>Whether it was reached. Default: not tried.</summary>
    public OneOf<Reach> Reach { get; init; } = Records.Reach.NotTried;

    /// <summary>Markings unit by unit.</summary>
    public ImmutableArray<PartMarking> PerUnit { get; init; } = [];

    /// <summary>Measured or stated properties.</summary>
    public ImmutableArray<Spec> Specs { get; init; } = [];

    /// <summary>What the maker demands when it is replaced; <c>null</c> when unknown.</summary>
    public Serialisation? Serialised { get; init; }

    /// <summary>What about it can hurt; <c>default</c> when not observed.</summary>
    public EntryList<Hazard> Hazards { get; init; }
}

/// <summary>What is printed on a part of one unit.</summary>
public sealed record PartMarking : RecordEntry
{
    /// <summary>Id of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>The text on the part.</summary>
    public string? Marking { get; init; }

    /// <summary>The part's own model code.</summary>
    public string? ModelCode { get; init; }
}

/// <summary>A property of a part, such as <c>rated-capacity</c>.</summary>
public sealed record Spec : RecordEntry
{
    /// <summary>Name of the property, a slug.</summary>
    public required string Name { get; init; }

    /// <summary>Its value; may be negative.</summary>
    public required Quantity Value { get; init; }

    /// <summary>Unit of the value.</summary>
    public required string Unit { get; init; }
}

/// <summary>A part with a code that the software looks at. Both actions <see cref="SerialAction.None"/> mean it is not serialised.</summary>
public sealed record Serialisation
{
    /// <summary>How the maker must be notified.</summary>
    public OneOf<SerialAction> Notify { get; init; }

    /// <summary>How the maker must authorise.</summary>
    public OneOf<SerialAction> Authorise { get; init; }

    /// <summary>Working days until access to the means is given.</summary>
    public Quantity? AccessDays { get; init; }

    /// <summary>Who gets access.</summary>
    public OneOf<Audience> Audience { get; init; }
}
