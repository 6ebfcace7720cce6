using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Generations;
using FixScore.Analysis.Uncertainty;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Reporting.Reports;

/// <summary>Makes the input of a report from records and profiles: scores, comparisons, findings. Stateless, so safe to use from any thread.</summary>
public static class ReportInputs
{
    // A drawn total is made by the kernel, some thousand times slower than a drawn weight.
    const int MostScoreDraws = 1_000;

    /// <summary>Scores every record by every profile, checks it against the legal requirements that are installed, and compares.</summary>
    /// <param name="records">Records of different devices, one at least.</param>
    /// <param name="profiles">The profiles, one at least; the first decides the order.</param>
    /// <param name="requirements">Sets of legal requirements to check, asked for the day of each assessment.</param>
    /// <param name="generations">Pairs of record ids, the old one first.</param>
    /// <param name="draws">How weights and open values are drawn.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ArgumentException">An id of a record stands twice, or a generation names a record that is not there.</exception>
    /// <inheritdoc cref="Scorer.Score" path="/exception"/>
    public static ReportInput Of(
        ImmutableArray<RecordDocument> records, ImmutableArray<Profile> profiles, ImmutableArray<Installed<IRequirementSet>> requirements,
        ImmutableArray<(string Old, string New)> generations, DrawsMade draws, CancellationToken cancellation = default)
    {
        ImmutableArray<ProfileScores> scores = [.. profiles.Select(profile => ProfileScores.Of(records, profile, cancellation: cancellation))];
        ImmutableArray<Judgement> judgements = [.. scores.SelectMany(each => each.Scores.Zip(records, (score, document) => new Judgement(document.Record, each.Profile, score)))];
        var comparison = records.Length > 1 ? ProfileComparison.Of(scores) : null;
        return new()
        {
            Judgements = judgements,
            Requirements = [.. records.SelectMany(document => Checked(document, requirements, cancellation))],
            Comparison = comparison,
            Studies = comparison is null ? [] : [.. scores.Select((each, index) => WeightStudy.Of(each, comparison.Profiles[index], draws.Spread, new AcceptabilityOptions(draws.Count, draws.Seed))).OfType<WeightStudy>()],
            Draws = draws,
            Spreads = [.. judgements.Index().Select(each => Spread(each.Item, records[each.Index % records.Length], draws, cancellation))],
            Generations = [.. generations.Select(pair => Compared(Find(records, pair.Old), Find(records, pair.New), profiles[0], cancellation))],
        };
    }

    static IEnumerable<CheckedRequirements> Checked(RecordDocument document, ImmutableArray<Installed<IRequirementSet>> sets, CancellationToken cancellation)
    {
        var (source, date) = (new RecordCase(document.Record, cancellation), document.Record.Assessment.Date);
        return sets.Select(set => new CheckedRequirements(document.Record.Id, date, set.Item.Info, set.Check(source, date, cancellation)));
    }

    static ScoreSpread Spread(Judgement judgement, RecordDocument document, DrawsMade draws, CancellationToken cancellation) =>
        new(judgement, ScoreUncertainty.Of(document, judgement.Profile, Math.Min(draws.Count, MostScoreDraws), draws.Seed, cancellation));

    static RecordDocument Find(ImmutableArray<RecordDocument> records, string id) =>
        records.FirstOrDefault(document => document.Record.Id == id) ?? throw new ArgumentException($"There is no record '{id}'.", nameof(records));

    static Generation Compared(RecordDocument old, RecordDocument @new, Profile profile, CancellationToken cancellation) =>
        new(old.Record, @new.Record, profile, ScoreAttribution.Of(old, @new, profile, cancellation));
}
