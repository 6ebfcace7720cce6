using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>swaps plan RECORD</c>: the next swap trial and what follows from its outcomes.</summary>
sealed class SwapsPlanCommand : AppCommand
{
    readonly Argument<string> record = new("RECORD") { Description = "A teardown record; - for standard input." };
    readonly Option<PlanObjective> objective = WordOption.Of<PlanObjective>("--objective", "What the plan is to be least in; rebuilds unless given. Without recorded times minutes cannot be told.");
    readonly Option<bool> isFixed = new("--fixed") { Description = "As well: trials decided beforehand, for one tied part at most unless --at-most says more." };
    readonly Option<int> atMost = WholeNumberOption.Of("--at-most", "Believe that no more than so many of the open parts are tied; no limit unless given.", TieBelief.MostCandidates);
    readonly Option<string[]> prior = new("--prior") { Description = "How probable ties are before any trial: a JSON file, or ROLE=P such as battery=0.4. Can be given several times.", HelpName = "FILE|ROLE=P" };
    readonly Option<LockState?> lockState = WordOption.Optional<LockState>("--lock-state", "Plan for this state of the boot lock.");
    readonly Option<string?> software = new("--software") { Description = "Plan for this software; the context with most trials unless a context is given.", HelpName = "TEXT" };
    readonly Option<SwapProcedure?> procedure = WordOption.Optional<SwapProcedure>("--procedure", $"Plan for this procedure after the swap: {string.Join(", ", Word.All<SwapProcedure>())}.");
    readonly Option<int> effort = WholeNumberOption.Of("--effort", "The most trials that the search may weigh, counted, so that the answer is the same everywhere.", AdaptivePlan.UsualEffort);

    public SwapsPlanCommand() : base("plan", "Tells the next swap trial, and what to try after each outcome.",
        "swaps plan slate-2.json", "swaps plan slate-2.json --objective minutes --prior battery=0.5", "swaps plan slate-2.json --fixed --at-most 2 --json")
    {
        Add(record);
        foreach (var option in (Option[])[objective, isFixed, atMost, prior, lockState, software, procedure, effort]) Add(option);
        // All words in a row would leave no room for what the options do.
        procedure.HelpName = "WORD";
    }

    public override int Run(CommandSession session)
    {
        var query = new PlanQuery(null, session.Parsed.GetValue(objective), Limit(session), GivenPriors.Of(session, session.Parsed.GetValue(prior) ?? []), session.Parsed.GetValue(effort));
        if (session.ReadRecord(session.Parsed.GetValue(record)!) is not { } document) return ExitCode.InvalidInput;
        var plan = Plan(session, document.Record, query with { Context = ContextIn(session, document.Record) });
        var withFixed = session.Parsed.GetValue(isFixed);
        if (session.AsJson) session.Write(null, SwapsPlanJson.Of(document.Record, plan, withFixed));
        else new SwapsPlanView(session, document.Record).Show(plan, withFixed);
        return plan.Obstacle is PlanObstacle.Contradiction or PlanObstacle.Impossible ? ExitCode.Difference : ExitCode.Done;
    }

    int? Limit(CommandSession session) => session.Parsed.GetValue(atMost) is < TieBelief.MostCandidates and var most ? most : null;

    SwapContext ContextIn(CommandSession session, TeardownRecord record) =>
        PlanContexts.Usual(record, session.Parsed.GetValue(lockState), session.Parsed.GetValue(software), session.Parsed.GetValue(procedure));

    static TrialPlan Plan(CommandSession session, TeardownRecord record, PlanQuery query)
    {
        using var progress = Terminal.Progress.Start(session, "Planning");
        return TrialPlan.Of(new RecordCase(record, session.Cancellation), query, session.Cancellation);
    }
}
