using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>The boot lock: what opening and closing it costs, what is lost and comes back, and what it changes for swaps.</summary>
sealed class LocksSection(CultureInfo culture)
{
    const string Title = "Boot lock";

    public Section Of(TeardownCase source)
    {
        var costs = source.Derive<LockCosts>();
        var compared = ComparedSections.Locks(source.Derive<ContextComparison>());
        return new(Title, costs.Trials.IsEmpty ? [Untried(source.Record), .. StatesOf(source.Record) is [_, _, ..] ? [compared] : (Block[])[]] : [.. Told(source.Record, costs), compared])
        {
            Anchor = $"{source.Record.Id}-lock",
        };
    }

    static Prose Untried(TeardownRecord record) => new(record.Locks.IsRecorded ? "No trial with the boot lock was made." : "Trials with the boot lock are not recorded.");

    IEnumerable<Block> Told(TeardownRecord record, LockCosts costs)
    {
        var terms = new RecordTerms(record, culture);
        return
        [
            new Prose(Summary(costs), Tone.Lead),
            new Prose($"Swap trials were made with the lock in these states: {States(record)}.", Tone.Quiet),
            new Prose("Opening or closing the lock can wipe the data: back them up first.", Tone.Mind),
            Trials(terms, record, costs),
            Losses(costs),
            Items.Of(costs.Contradictions.Select(finding => PlainText.Of(finding.Why.ToString(culture))), Tone.Mind),
            Items.Of(costs.Doubts.Select(finding => PlainText.Of(finding.Why.ToString(culture))), Tone.Open),
        ];
    }

    static string Summary(LockCosts costs)
    {
        LockCost[] opening = [.. costs.Trials.Where(cost => cost.Opens)];
        if (opening.Length == 0) return "No trial opened the lock.";
        var functions = opening.Where(cost => cost.Trial.Outcome.MayBe(LockOutcome.Done)).SelectMany(cost => cost.Losses).Select(lost => RecordTerms.Name(lost.Loss.Function)).Distinct(StringComparer.Ordinal).ToArray();
        var outcomes = string.Join("; ", opening.Select(cost => $"{RecordTerms.Words(cost.Trial.Outcome)} on {cost.Trial.Unit}"));
        return $"Opening the lock: {outcomes}. {(functions.Length == 0 ? "No lost function is recorded." : $"Lost with the lock open: {string.Join(", ", functions)}.")}";
    }

    static string States(TeardownRecord record) => string.Join(", ", StatesOf(record)) is { Length: > 0 } states ? states : RecordTerms.NotRecorded;

    static ImmutableArray<string> StatesOf(TeardownRecord record) =>
        [.. record.Swaps.Select(trial => trial.LockState).OfType<LockState>().Distinct().Order().Select(RecordTerms.Plainly)];

    static Grid Trials(RecordTerms terms, TeardownRecord record, LockCosts costs) => new("Trials with the boot lock",
        ["Trial", "Unit", "Lock", "Outcome", new("Days of waiting", GridKind.Number), "Wipes the data", "Maker says the warranty ends", new("Remarks") { IsExtra = true }],
        [.. costs.Trials.Select(cost => Row(terms, record, cost.Trial))]);

    static ImmutableArray<GridCell> Row(RecordTerms terms, TeardownRecord record, LockTrial trial) =>
    [
        trial.Id, trial.Unit, $"{RecordTerms.Plainly(trial.From)} to {RecordTerms.Plainly(trial.To)}", RecordTerms.Words(trial.Outcome),
        Days(terms, trial.WaitDays), YesOrNo(trial.WipesData), YesOrNo(trial.WarrantyNotice), RemarkText.Of(record, trial),
    ];

    static GridCell Days(RecordTerms terms, Quantity? days) => terms.Amount(days ?? default);

    static Grid Losses(LockCosts costs) => new("Functions lost",
        ["Function", "Lost in", "Comes back", "Once the lock is closed again"],
        [.. costs.Trials.SelectMany(cost => cost.Losses, (cost, lost) => Row(cost, lost))]);

    static ImmutableArray<GridCell> Row(LockCost cost, LostFunction lost) =>
        [RecordTerms.Name(lost.Loss.Function), cost.Trial.Id, Recovery(lost), cost.Opens ? After(lost) : "-"];

    static string Recovery(LostFunction lost) => $"{RecordTerms.Words(lost.Loss.Recovers)}{(lost.IsContradicted ? ", contradicted" : "")}";

    static string After(LostFunction lost) => lost.AfterRelock switch
    {
        AfterRelock.Works => $"at work ({Trials(lost)})",
        AfterRelock.Lost => $"still lost ({Trials(lost)})",
        AfterRelock.NotListed => $"not listed as lost ({Trials(lost)})",
        AfterRelock.Disputed => $"at work in one trial, lost in another ({Trials(lost)})",
        _ => RecordTerms.NotRecorded,
    };

    static string Trials(LostFunction lost) => string.Join(", ", lost.SeenIn);

    static string YesOrNo(bool? flag) => flag switch { true => "yes", false => "no", null => RecordTerms.NotRecorded };
}
