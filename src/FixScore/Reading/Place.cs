namespace FixScore.Reading;

/// <summary>Where a value stands, as a chain to the root: the pointer is made only when a problem needs it.</summary>
sealed class Place(Place? parent, string? name, int index = -1)
{
    public static Place Root { get; } = new(null, null);

    public Pointer Pointer => parent is null
        ? Pointer.Root
        : name is null ? parent.Pointer.Child(index) : parent.Pointer.Child(name);

    /// <summary>Where the next element of a list stands; behind a member, whose name comes anew, the same place.</summary>
    public Place After => parent is null || name is not null ? this : new(parent, null, index + 1);
}
