using System.Collections.Concurrent;

namespace FixScore;

/// <summary>Reads records and scores them with the default profile or one that is named.</summary>
/// <remarks>Thread safe. A profile is bound once and kept.</remarks>
/// <param name="catalogue">The criteria installed.</param>
/// <param name="library">The profiles at hand.</param>
/// <param name="settings">The settings; their default profile scores when none is named.</param>
public sealed class ScoringDesk(Catalogue catalogue, ProfileLibrary library, FixScoreSettings settings)
{
    readonly ConcurrentDictionary<string, Profile> bound = new(StringComparer.Ordinal);

    /// <summary>Reads a record; all problems come at once.</summary>
    /// <param name="utf8">The text: JSON in UTF-8.</param>
    public ReadResult<RecordDocument> Read(ReadOnlyMemory<byte> utf8) => RecordFile.Read(utf8, catalogue);

    /// <summary>A profile, bound to the criteria installed.</summary>
    /// <param name="name"><c>ID</c> (its newest version) or <c>ID@VERSION</c>; <c>null</c> for the default profile.</param>
    /// <exception cref="UnknownProfileException">There is none of that name, or none was named and there is no default.</exception>
    /// <exception cref="InvalidDocumentException">It cannot be used; carries all problems.</exception>
    public Profile Profile(string? name = null) => bound.GetOrAdd(name ?? settings.DefaultProfile ?? throw UnknownProfileException.NoDefault(), Bind);

    /// <summary>Reads a record from a file and scores it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="profile">The profile, as for <see cref="Profile"/>.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="InvalidDocumentException">The record or the profile cannot be used; carries all problems.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnknownProfileException">There is no such profile.</exception>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed and <paramref name="mode"/> is <see cref="ScoringMode.Strict"/>.</exception>
    public ScoreDocument ScoreFile(string path, string? profile = null, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default) =>
        Score(RecordFile.Load(path, catalogue), profile, mode, cancellation);

    /// <summary>Scores a record that was read.</summary>
    /// <param name="record">The record.</param>
    /// <param name="profile">The profile, as for <see cref="Profile"/>.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="InvalidDocumentException">The profile cannot be used; carries all problems.</exception>
    /// <exception cref="UnknownProfileException">There is no such profile.</exception>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed and <paramref name="mode"/> is <see cref="ScoringMode.Strict"/>.</exception>
    public ScoreDocument Score(RecordDocument record, string? profile = null, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default) =>
        Scorer.Score(record, Profile(profile), mode, cancellation);

    Profile Bind(string name) => library.Find(name) is { } entry
        ? ProfileFile.Read(entry.Text, catalogue, library).OrThrow()
        : throw UnknownProfileException.Named(name, library);
}
