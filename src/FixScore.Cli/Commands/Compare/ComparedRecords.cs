using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Uncertainty;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Terminal;
using FixScore.Reporting.Paper;

namespace FixScore.Cli.Commands.Compare;

/// <summary>Reads records and profiles, scores every record by every profile and compares.</summary>
sealed class ComparedRecords(CommandSession session, WeightSpread spread, AcceptabilityOptions options)
{
    // A drawn total is made by the kernel, some thousand times slower than a drawn weight.
    const int MostDraws = 2_000;

    /// <summary>The comparison; <c>null</c> when something cannot be read or a profile is not for a record, which is told.</summary>
    public Compared? Of(string[] paths, string[] profileNames)
    {
        if (paths.Length < 2) throw new UsageException("There is nothing to compare: name two records at least, or a --table.");
        if (profileNames.Length == 0) throw new UsageException("Name a --profile at least, and two to compare profiles.");
        var profiles = profileNames.Select(session.ReadProfileText).ToArray();
        var records = paths.Select(session.ReadRecordText).ToArray();
        if (profiles.Any(profile => profile.Profile is null) || records.Any(record => record.Document is null)) return null;
        // Every record that a profile is not for is named, not only the first.
        if (profiles.Sum(profile => records.Count(record => !session.Fits(record.Input.Name, record.Document!, profile.Profile!))) > 0) return null;
        if (records.GroupBy(record => record.Document!.Record.Id).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new UsageException($"The record '{twice.Key}' stands twice. Give each record an id of its own.");
        using var progress = Progress.Start(session, "Comparing");
        ImmutableArray<RecordDocument> documents = [.. records.Select(record => record.Document!)];
        ImmutableArray<ProfileScores> scores = [.. profiles.Select(profile => ProfileScores.Of(documents, profile.Profile!, cancellation: session.Cancellation))];
        var result = ProfileComparison.Of(scores);
        return new(
            [.. documents.Select(document => $"{document.Record.Device.Maker} {document.Record.Device.Model}")], "profile", result,
            [.. scores.Select((each, index) => WeightStudy.Of(each, documents, result.Profiles[index], spread, options, session.Cancellation)).OfType<WeightStudy>()],
            [.. from profile in Enumerable.Range(0, scores.Length)
                from device in Enumerable.Range(0, documents.Length)
                select new Spread(device, profile, ScoreUncertainty.Of(documents[device], scores[profile].Profile, Math.Min(options.Draws, MostDraws), options.Seed, session.Cancellation))],
            [.. records.Select(record => new PaperSource($"{record.Document!.Record.Id}.json", record.Input.Bytes, $"record {record.Document.Record.Id}, {record.Document.Digest}"))],
            [.. scores.Zip(profiles, (each, profile) => Source(each.Scores[0].Profile, profile.Text))],
            [.. scores.SelectMany(each => each.Scores[0].Bases).Distinct().Except(scores.Select(each => each.Scores[0].Profile)).Select(each => Source(each, session.Library.Find(each.Id, each.Version)!.Value))]);
    }

    static PaperSource Source(ProfileReference profile, ReadOnlyMemory<byte> text) =>
        new($"{profile.Id}-{profile.Version}.json", text, $"profile {profile.Id} {profile.Version}, {profile.Digest}");
}
