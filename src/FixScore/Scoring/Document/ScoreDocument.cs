using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Scoring;

namespace FixScore;

/// <summary>An explained score that anyone can recompute to the last digit.</summary>
/// <remarks>Format <c>fixscore-score/1</c>. Points are on the profile's scale; more is better. Immutable and thread safe.</remarks>
public sealed record ScoreDocument
{
    /// <summary>The value of the member <c>format</c>.</summary>
    public const string Format = "fixscore-score/1";

    /// <summary>The record judged.</summary>
    public required RecordReference Record { get; init; }

    /// <summary>The profile that judged.</summary>
    public required ProfileReference Profile { get; init; }

    /// <summary>The profiles it extends, nearest first.</summary>
    public required ImmutableArray<ProfileReference> Bases { get; init; }

    /// <summary>The plugins the profile uses, by id.</summary>
    public required ImmutableArray<PluginIdentity> Plugins { get; init; }

    /// <summary>Version of the kernel, without build metadata.</summary>
    public required string KernelVersion { get; init; }

    /// <summary>What a failing criterion does.</summary>
    public required ScoringMode Mode { get; init; }

    /// <summary>Share of weight whose leaf is fully known, 0 to 1.</summary>
    public required decimal Coverage { get; init; }

    /// <summary>The exact total, after gates.</summary>
    public required Interval Total { get; init; }

    /// <summary>The total as shown.</summary>
    public required Interval Shown { get; init; }

    /// <summary>The classes of both ends; <c>null</c> when the profile has none.</summary>
    public required ClassRange? Class { get; init; }

    /// <summary>The exact total before gates.</summary>
    public required Interval BeforeGates { get; init; }

    /// <summary>All nodes, depth first.</summary>
    public required ImmutableArray<ScoreNode> Nodes { get; init; }

    /// <summary>Criteria that failed; empty in strict mode.</summary>
    public required ImmutableArray<ScoreFault> Faults { get; init; }

    /// <summary>Gates that closed.</summary>
    public required ImmutableArray<ScoreGate> Gates { get; init; }

    /// <summary>Points on which the source is silent.</summary>
    public required ImmutableArray<ScoreReading> Readings { get; init; }

    /// <summary>Text to be shown with the result.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>The document as JSON in UTF-8, indented, with its digest: the same bytes everywhere.</summary>
    public byte[] ToJson() => ScoreWriter.WithDigest(this);

    /// <summary>The same document on one line, without a line feed, for files of lines.</summary>
    public byte[] ToJsonLine() => ScoreWriter.OneLine(this);

    /// <summary>The digest: <c>sha256:</c> and the SHA-256 of the RFC 8785 form without <c>digest</c>. Computed at each call.</summary>
    public string ComputeDigest()
    {
        using var document = JsonDocument.Parse(ScoreWriter.WithoutDigest(this));
        return Canonical.Digest.Of(document.RootElement);
    }
}

/// <summary>Names a record.</summary>
/// <param name="Id">The id.</param>
/// <param name="Digest">Digest of the record.</param>
public sealed record RecordReference(string Id, string Digest);

/// <summary>The classes that the low and the high end of a total fall in.</summary>
/// <param name="Low">Class of the low end.</param>
/// <param name="High">Class of the high end.</param>
public sealed record ClassRange(string Low, string High);

/// <summary>A low and a high end that rounding remainders may put in any order.</summary>
/// <param name="Low">At the low end of the total.</param>
/// <param name="High">At the high end of the total.</param>
public readonly record struct Ends(decimal Low, decimal High);
