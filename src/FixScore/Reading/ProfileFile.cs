using System.Text.Json;
using FixScore.Reading;
using FixScore.Reading.Profiles;

namespace FixScore;

/// <summary>Reads scoring profiles, merges in what they extend and binds them to what is installed. Thread safe.</summary>
public static class ProfileFile
{
    /// <summary>Reads a profile; all problems come at once.</summary>
    /// <param name="utf8">The text: JSON in UTF-8, at most 64 MiB, a byte order mark is skipped.</param>
    /// <param name="catalogue">The criteria that leaves may name.</param>
    /// <param name="bases">Where base profiles are found; <c>null</c> for nowhere.</param>
    public static ReadResult<Profile> Read(ReadOnlyMemory<byte> utf8, Catalogue catalogue, IProfileSource? bases = null)
    {
        var text = JsonText.WithoutMark(utf8);
        var (document, problem, offset) = JsonText.Parse(text);
        if (document is null) return new(null, Locator.At(text, problem!, offset));
        using (document)
        {
            var context = new ReadingContext();
            var resolved = new ProfileResolver(bases ?? NoBases.Instance).Resolve(document.RootElement, context);
            var binding = new ProfileBinding(catalogue, context);
            var profile = resolved is null ? null : ProfileReader.Read(resolved, binding);
            var problems = context.Problems.Count == 0 ? [] : Locator.Locate(text, context.Problems.Select(new OwnPlaces(document.RootElement, binding).Move));
            return new(context.HasErrors ? null : profile, problems);
        }
    }

    /// <summary>Reads a profile from a file.</summary>
    /// <exception cref="InvalidDocumentException">The profile cannot be used; carries all problems.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static Profile Load(string path, Catalogue catalogue, IProfileSource? bases = null) =>
        Read(JsonText.Load(path), catalogue, bases).OrThrow();

    sealed class NoBases : IProfileSource
    {
        public static NoBases Instance { get; } = new();

        public ReadOnlyMemory<byte>? Find(string id, string version) => null;
    }
}
