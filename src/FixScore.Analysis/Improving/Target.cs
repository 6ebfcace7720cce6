namespace FixScore.Analysis.Improving;

/// <summary>What a device is to reach: a class of the profile, or a number of points. Immutable and thread safe.</summary>
/// <remarks>It counts as reached when the low end of the total reaches it: what is unknown may turn out worst.</remarks>
public sealed record Target
{
    Target(decimal? points, string? label) => (Points, Class) = (points, label);

    /// <summary>The least total, exact; <c>null</c> when a class is asked for.</summary>
    public decimal? Points { get; }

    /// <summary>Label of the class that is to be reached or exceeded; <c>null</c> when points are asked for.</summary>
    public string? Class { get; }

    /// <summary>A least total, on the scale of the profile.</summary>
    public static Target OfPoints(decimal points) => new(points, null);

    /// <summary>A class, by its label.</summary>
    /// <param name="profile">The profile that has it.</param>
    /// <param name="label">Its label.</param>
    /// <exception cref="ArgumentException">The profile has no such class.</exception>
    public static Target OfClass(Profile profile, string label) => profile.Classes.Any(each => each.Label == label)
        ? new(null, label)
        : throw new ArgumentException($"The profile has no class '{label}'.", nameof(label));

    /// <summary>Whether a total reaches it, at its low end.</summary>
    /// <param name="total">The total.</param>
    /// <param name="profile">The profile that it was scored by.</param>
    public bool IsReachedBy(ScoreTotal total, Profile profile) => Class is null
        ? total.Total.Low >= Points
        : Place(profile, total.Class!.Low) <= Place(profile, Class);

    // Classes stand highest first.
    static int Place(Profile profile, string label) => profile.Classes.Select(each => each.Label).ToList().IndexOf(label);
}
