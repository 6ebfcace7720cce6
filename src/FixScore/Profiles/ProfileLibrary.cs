using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Reading;
using FixScore.Reading.Profiles;

namespace FixScore;

/// <summary>Profiles at hand, found by id and version.</summary>
/// <remarks>Immutable and thread safe. Of two texts with the same id and version the one added first is kept.</remarks>
public sealed class ProfileLibrary : IProfileSource
{
    readonly ImmutableArray<ProfileEntry> entries;

    ProfileLibrary(ImmutableArray<ProfileEntry> entries) => this.entries = entries;

    /// <summary>No profiles.</summary>
    public static ProfileLibrary Empty { get; } = new([]);

    /// <summary>All profiles, by id, newest version first.</summary>
    public ImmutableArray<ProfileEntry> Entries => entries;

    /// <summary>A library of texts. Texts that are no profiles of this format are left out.</summary>
    /// <param name="texts">Where each text is from, for people, and the text in UTF-8.</param>
    public static ProfileLibrary Of(IEnumerable<(string From, ReadOnlyMemory<byte> Text)> texts) =>
        new([.. texts.Select(text => ProfileEntry.Named(text.From, text.Text)).OfType<ProfileEntry>()
            .DistinctBy(entry => (entry.Id, entry.Version))
            .OrderBy(entry => entry.Id, StringComparer.Ordinal)
            .ThenByDescending(entry => entry.Version, SemanticVersion.Order)]);

    /// <summary>A library of all <c>.json</c> files in folders, in the order of the folders and of the file names.</summary>
    /// <exception cref="IOException">A folder or file cannot be read.</exception>
    public static ProfileLibrary OfFolders(params IEnumerable<string> folders) =>
        Of(folders.SelectMany(folder => Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal))
            .Select(file => (file, (ReadOnlyMemory<byte>)File.ReadAllBytes(file))));

    /// <summary>Both libraries; what this one has comes first.</summary>
    public ProfileLibrary With(ProfileLibrary more) => Of(entries.Concat(more.entries).Select(entry => (entry.From, entry.Text)));

    /// <summary>A profile by <c>ID</c> (its newest version) or <c>ID@VERSION</c>; <c>null</c> when there is none.</summary>
    public ProfileEntry? Find(string name) => name.Split('@') is [var id, var version]
        ? entries.FirstOrDefault(entry => entry.Id == id && entry.Version == version)
        : entries.FirstOrDefault(entry => entry.Id == name);

    /// <inheritdoc/>
    public ReadOnlyMemory<byte>? Find(string id, string version) => Find($"{id}@{version}")?.Text;
}

/// <summary>The text of a profile.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Version">Its version.</param>
/// <param name="From">Where it is from, for people.</param>
/// <param name="Text">The text in UTF-8.</param>
public sealed record ProfileEntry(string Id, string Version, string From, ReadOnlyMemory<byte> Text)
{
    /// <summary>An entry for a text; <c>null</c> when it names no profile of this format.</summary>
    internal static ProfileEntry? Named(string from, ReadOnlyMemory<byte> text)
    {
        var (document, _, _) = JsonText.Parse(JsonText.WithoutMark(text));
        using (document)
        {
            if (document?.RootElement is not { ValueKind: JsonValueKind.Object } root || Member(root, "format") != Profile.Format) return null;
            return Member(root, "id") is { } id && Member(root, "version") is { } version ? new(id, version, from, text) : null;
        }
    }

    static string? Member(JsonElement root, string name)
    {
        try
        {
            return root.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
        }
        catch (InvalidOperationException)
        {
            return null; // Half of a surrogate pair: nobody can ask for such a profile.
        }
    }
}
