using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Pairing;

/// <summary>What a part does that can be seen at the bench.</summary>
/// <param name="Role">The role of the part.</param>
/// <param name="Function">A slug, as checks of swap trials name it.</param>
/// <param name="Title">A word or two for people.</param>
/// <param name="How">How to check it, in one line.</param>
/// <param name="IsEssential">Whether a trial with such a part that leaves it unchecked says little.</param>
/// <param name="Also">Functions whose check counts as well, such as those of a second display.</param>
public sealed record PartFunction(string Role, string Function, string Title, string How, bool IsEssential, ImmutableArray<string> Also)
{
    /// <summary>Whether a check of this function is one of the part's; blanks stand for hyphens.</summary>
    public bool IsCheckedBy(string function) => function.Replace(' ', '-') is var slug && (slug == Function || Also.Contains(slug));
}

/// <summary>Functions by role of a part, for check lists before and after work and for swap trials. Common practice, no source: a list of our own.</summary>
/// <remarks>From the data file <c>functions.json</c> of this assembly, in its order. Immutable and thread safe. No score uses it.</remarks>
public static class PartFunctions
{
    /// <summary>Where the list comes from, for people.</summary>
    public static string About { get; }

    /// <summary>All functions, role by role.</summary>
    public static ImmutableArray<PartFunction> All { get; }

    static PartFunctions()
    {
        using var stream = typeof(PartFunctions).Assembly.GetManifestResourceStream("functions/functions.json")!;
        using var document = JsonDocument.Parse(stream);
        About = document.RootElement.GetProperty("about").GetString()!;
        All = [.. document.RootElement.GetProperty("roles").EnumerateObject().SelectMany(role => role.Value.EnumerateArray().Select(function => Read(role.Name, function)))];
    }

    /// <summary>Functions of a role; none for one that the list does not know.</summary>
    public static ImmutableArray<PartFunction> Of(string role) => [.. All.Where(function => function.Role == role)];

    static PartFunction Read(string role, JsonElement function) => new(
        role, function.GetProperty("function").GetString()!, function.GetProperty("title").GetString()!, function.GetProperty("how").GetString()!,
        function.TryGetProperty("essential", out var essential) && essential.GetBoolean(),
        function.TryGetProperty("also", out var also) ? [.. also.EnumerateArray().Select(each => each.GetString()!)] : []);
}
