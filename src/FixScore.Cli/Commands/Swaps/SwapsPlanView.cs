using System.Collections.Immutable;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Terminal;
using FixScore.Pairing;
using FixScore.Records;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>A plan of swap trials as text for the bench.</summary>
sealed class SwapsPlanView(CommandSession session, TeardownRecord record)
{
    const int TreeDepth = 3;
    const int MostOutcomes = 20;

    readonly Canvas canvas = session.Canvas;
    readonly Names names = new(record);

    public void Show(TrialPlan plan, bool withFixed)
    {
        canvas.Heading(names.Device);
        canvas.Line($"Swap trials with {plan.Context}.");
        canvas.Line($"{Counted(plan.Candidates.Length)} open, {Counted(plan.Tied.Length)} proven tied, {Counted(plan.Cleared.Length)} proven free.");
        if (!plan.NotMovable.IsEmpty) canvas.Line($"Open as well, but not to be taken out undamaged, so that no trial can settle them: {Parts([.. plan.NotMovable.Select(unit => unit.Id)])}.");
        canvas.Line();
        if (plan.Plan is null) canvas.Line(Obstacle(plan.Obstacle!.Value));
        else if (plan.Plan.Start.Next is { } next) Show(plan, plan.Plan, next, withFixed);
        else canvas.Line("Nothing is left to try.");
    }

    void Show(TrialPlan plan, AdaptivePlan adaptive, PlannedTrial next, bool withFixed)
    {
        Next(plan, next);
        Tree(adaptive);
        Costs(adaptive);
        if (withFixed) Fixed(plan);
        Assumptions(plan, adaptive);
        foreach (var caution in SafetyText.For([record])) canvas.Item(0, "!", caution);
    }

    void Next(TrialPlan plan, PlannedTrial next)
    {
        canvas.Heading("The next trial");
        if (!plan.HasControl) canvas.Item(1, "0.", $"First a control, which this context lacks: check {plan.Host!.Id} as it is. What it flags is its own fault.");
        canvas.Item(1, "1.", $"Put these parts of {plan.Donor!.Id} into {plan.Host!.Id}, and those of {plan.Host.Id} aside or into {plan.Donor.Id}:");
        foreach (var id in next.Foreign) canvas.Item(3, "-", Part(plan, id));
        canvas.Item(1, "2.", plan.Functions.IsEmpty ? "Check every function that any of these parts serves." : $"Check every function: {string.Join(", ", plan.Functions)}.");
        var roles = plan.Candidates.Where(unit => next.Foreign.Contains(unit.Id)).SelectMany(unit => unit.Parts).Select(part => part.Role).ToArray();
        foreach (var function in plan.PartFunctions.Where(function => roles.Contains(function.Role)))
            canvas.Item(3, "-", $"{function.Function}: {function.How}");
        canvas.Item(1, "3.", $"Write it into the record as a trial with host {plan.Host.Id}, every part that is foreign, and every check.");
        canvas.Line();
    }

    void Tree(AdaptivePlan plan)
    {
        canvas.Heading("What the outcomes mean, and what comes next");
        Trial(plan.Tree(TreeDepth).Next!, 1);
        canvas.Line();
    }

    void Trial(PlannedTrial trial, int level)
    {
        canvas.Item(level, "*", $"foreign: {Ids(trial.Foreign)}");
        Branch(level + 1, $"all works ({session.Shown.Percent(trial.CleanProbability)})", trial.OnClean);
        Branch(level + 1, $"worse ({session.Shown.Percent(1 - trial.CleanProbability)})", trial.OnFlagged);
    }

    void Branch(int level, string outcome, PlanBranch branch)
    {
        canvas.Item(level, "-", $"{outcome}: {Meaning(branch)}");
        if (branch.Next is { } next) Trial(next, level + 1);
    }

    string Meaning(PlanBranch branch)
    {
        var parts = new List<string>();
        if (!branch.Tied.IsEmpty) parts.Add($"{Ids(branch.Tied)} tied");
        if (!branch.Cleared.IsEmpty) parts.Add($"{Ids(branch.Cleared)} free");
        parts.AddRange(branch.Suspects.Select(suspects => $"one at least of {Ids(suspects)} tied"));
        parts.Add(branch.IsSettled ? "all is settled" : branch.Next is null ? $"{branch.Open} open, trials to expect: {Number(branch.ExpectedTrials)}" : $"{branch.Open} open");
        return string.Join("; ", parts);
    }

    void Costs(AdaptivePlan plan)
    {
        canvas.Heading("What it takes");
        canvas.Table([("Plan", false), ("Trials to expect", true), ("At worst", true), ("Minutes to expect", true)],
            [Row("this plan", plan.Cost), Row("one at a time", plan.OneAtATime), Row("all at once first", plan.AllAtOnce)]);
        var what = plan.Objective switch { PlanObjective.Minutes => "minutes on average", PlanObjective.WorstCase => "trials at worst", _ => "trials on average" };
        canvas.Line(plan.IsOptimal ? $"Proven: no plan takes fewer {what} under this belief." : $"Best found, not proven; no plan takes fewer than {Number(plan.Bound)} {what}.");
        canvas.Line();
    }

    string[] Row(string name, PlanCost cost) =>
        [name, Number(cost.Trials), Number(cost.MostTrials), cost.Minutes is { } minutes ? session.Shown.Short(minutes) : RouteText.Nothing];

    void Fixed(TrialPlan plan)
    {
        canvas.Heading("Trials decided beforehand");
        if (FixedPlanOf(plan) is not { } trials)
        {
            canvas.Line("More parts must be tied than these trials allow; give a greater --at-most.");
            canvas.Line();
            return;
        }
        canvas.Line($"{trials.Trials.Length} trials, when no more than {trials.AtMost} of the open parts can be tied. {(trials.IsOptimal ? "Proven fewest." : $"No fewer than {trials.Bound} can do.")}");
        foreach (var (index, trial) in trials.Trials.Index()) canvas.Item(1, $"{index + 1}.", $"foreign: {Ids(trial)}");
        canvas.Line("Outcomes in this order, + all works, x worse:");
        foreach (var outcome in trials.Outcomes.Take(MostOutcomes))
            canvas.Item(1, string.Concat(outcome.Flagged.Select(flagged => flagged ? 'x' : '+')), outcome.Tied.IsEmpty ? "none is tied" : $"{Ids(outcome.Tied)} tied");
        if (trials.Outcomes.Length > MostOutcomes) canvas.Line($"  and {trials.Outcomes.Length - MostOutcomes} more; --json lists them all.");
        canvas.Line("Any other pattern: more parts are tied than was assumed.");
        canvas.Line();
    }

    static FixedPlan? FixedPlanOf(TrialPlan plan)
    {
        try
        {
            return plan.Fixed;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    void Assumptions(TrialPlan plan, AdaptivePlan adaptive)
    {
        canvas.Heading("What this rests on");
        canvas.Item(1, "-", $"How probable ties are: {plan.Priors.About}");
        if (plan.Query.AtMost is { } most) canvas.Item(1, "-", $"No more than {most} of the open parts are tied.");
        canvas.Item(1, "-", "A trial is worse just when a part that is foreign in it is tied. Which function is flagged may tell more; this plan does not count on it.");
        canvas.Item(1, "-", "Parts known to be free may stay where they are; parts known to be tied go home before the next trial.");
        canvas.Item(1, "-", adaptive.Cost.Minutes is null
            ? "Minutes are not told: not every way to these parts has recorded times."
            : $"Minutes count opening both units to what changes place and closing them, not the checks.{(plan.AssumesReassembly ? " Where closing has no recorded time it counts like opening." : "")}");
        canvas.Line();
    }

    string Part(TrialPlan plan, string id)
    {
        var unit = plan.Candidates.First(each => each.Id == id);
        return unit.Parts.Length == 1 ? names.Part(id) : $"{names.Part(id)}, with {string.Join(", ", unit.Parts.Skip(1).Select(part => part.Id))}";
    }

    string Parts(ImmutableArray<string> ids) => names.Things(ids);

    static string Ids(ImmutableArray<string> ids) => string.Join(", ", ids);

    string Number(decimal value) => session.Shown.Number(decimal.Round(value, 2));

    static string Counted(int count) => $"{count} part{(count == 1 ? "" : "s")}";

    static string Obstacle(PlanObstacle obstacle) => obstacle switch
    {
        PlanObstacle.Contradiction => "The trials of this context contradict one another; validate names them. Repeat those first.",
        PlanObstacle.OneDevice => "A plan needs two whole devices of the same model code; the record has no such pair of units.",
        PlanObstacle.TooMany => $"A plan can hold {TieBelief.MostCandidates} open parts at most.",
        _ => "More parts must be tied than --at-most allows.",
    };
}
