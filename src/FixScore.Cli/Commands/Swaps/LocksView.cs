using System.Globalization;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Terminal;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>What the boot lock costs, in sentences.</summary>
sealed class LocksView(Canvas canvas, CultureInfo culture)
{
    const string Unknown = "not recorded";

    public void Show(TeardownRecord record, LockCosts costs)
    {
        canvas.Heading("Boot lock");
        if (costs.Trials.IsEmpty) canvas.Item(1, "", record.Locks.IsRecorded ? "No trial was made." : "Trials are not recorded.", quiet: true);
        foreach (var cost in costs.Trials) Show(cost);
        foreach (var finding in costs.Contradictions) canvas.Item(1, "!", finding.Why.ToString(culture));
        foreach (var finding in costs.Doubts) canvas.Item(1, "?", finding.Why.ToString(culture));
        canvas.Line();
    }

    void Show(LockCost cost)
    {
        var trial = cost.Trial;
        canvas.Item(1, "-", $"{trial.Id}: {trial.Unit} from {Word.Of(trial.From)} to {Word.Of(trial.To)}, {Shown(trial.Outcome)}.");
        if (trial.Outcome.MayBe(LockOutcome.Done))
            canvas.Item(2, "", $"Days of waiting: {Days(trial.WaitDays)}. Wipes the data: {Shown(trial.WipesData)}. The maker says that the warranty ends: {Shown(trial.WarrantyNotice)}.");
        foreach (var lost in cost.Losses) canvas.Item(2, "-", $"{lost.Loss.Function} is lost, comes back: {Shown(lost.Loss.Recovers)}.{After(lost)}");
    }

    static string After(LostFunction lost) => lost.AfterRelock switch
    {
        AfterRelock.Works => $" At work again when relocked ({Trials(lost)}).",
        AfterRelock.Lost => $" Still lost when relocked ({Trials(lost)}).",
        AfterRelock.NotListed => $" Not listed as lost when relocked ({Trials(lost)}).",
        AfterRelock.Disputed => $" When relocked, at work in one trial and lost in another ({Trials(lost)}).",
        _ => "",
    };

    static string Trials(LostFunction lost) => string.Join(", ", lost.SeenIn);

    string Days(Quantity? days) => days switch
    {
        null or { Min: null, Max: null } => Unknown,
        { Min: { } min, Max: null } => $"{Value.Of(min).ToString(culture)} or more",
        _ => Value.Of(days.Value.Within(0, 0)).ToString(culture),
    };

    static string Shown(bool? flag) => flag switch { true => "yes", false => "no", null => Unknown };

    static string Shown<T>(OneOf<T> word) where T : struct, Enum => word.IsUnknown ? Unknown : string.Join(" or ", word.Stated.Select(Names.Plainly));
}
