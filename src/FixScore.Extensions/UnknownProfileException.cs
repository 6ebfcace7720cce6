using FixScore.Settings;

namespace FixScore;

/// <summary>There is no profile of a name, or none was named and there is no default.</summary>
public sealed class UnknownProfileException : Exception
{
    UnknownProfileException(string message, string? name) : base(message) => Name = name;

    /// <summary>The name asked for; <c>null</c> when none was.</summary>
    public string? Name { get; }

    internal static UnknownProfileException NoDefault() =>
        new("No profile was named and there is no default. Name one, or set 'defaultProfile'.", null);

    internal static UnknownProfileException Named(string name, ProfileLibrary library) =>
        new($"There is no profile '{name}'. {Suggestion.Hint(name, [.. library.Entries.Select(each => each.Id).Distinct()])}", name);
}
