using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Trials of a device whose software ties some parts to the board; which, is drawn first, so that no trials contradict each other.</summary>
static class GeneratedTrials
{
    public static void Add(RecordBuilder to, Plan plan, Dice dice)
    {
        var swappable = plan.Parts.Where(part => !part.Integral && part.Role != Roles.Mainboard).Select(part => part.Role).ToImmutableArray();
        var tied = dice.Some(swappable.Where(role => !Roles.IsInert(role)), 25);
        to.Unit("spare-a", dice.Word<UnitSource>());
        var count = dice.Between(0, 5);
        for (var number = 1; number <= count; number++)
            to.Swap(Trial($"swap-{number}", dice.Some(swappable, 40), tied, dice));
        if (dice.Chance(50)) to.Lock("lock-1", "unit-b", LockState.Locked, LockState.Unlocked, trial => Described(trial, dice));
    }

    static SwapTrial Trial(string id, ImmutableArray<string> installed, ImmutableArray<string> tied, Dice dice)
    {
        var from = dice.Chance(75) ? "unit-b" : "spare-a";
        return new()
        {
            Id = id,
            Host = "unit-a",
            Installed = [.. installed.Select(part => new InstalledPart(part, from))],
            LockState = dice.Chance(30) ? dice.Exactly<LockState>() : null,
            Procedure = dice.Chance(30) ? dice.Exactly<SwapProcedure>() : null,
            Checks = [Check(installed.Any(tied.Contains), dice), .. Untested(installed, dice)],
        };
    }

    static FunctionCheck Check(bool flagged, Dice dice) => new()
    {
        Function = $"function-{dice.Between(1, 3)}",
        Result = flagged ? dice.Pick<SwapResult>([SwapResult.Notice, SwapResult.Warning, SwapResult.Degraded, SwapResult.Refused]) : SwapResult.Works,
    };

    static ImmutableArray<FunctionCheck> Untested(ImmutableArray<string> implicated, Dice dice) => !dice.Chance(30) ? [] :
    [
        new() { Function = "function-4", Result = SwapResult.Untested, Implicates = dice.Chance(50) ? EntryList.Of(implicated) : default },
    ];

    static LockTrial Described(LockTrial trial, Dice dice) => trial with
    {
        Outcome = dice.Word<LockOutcome>(),
        WaitDays = dice.Number(0, 30),
        WipesData = dice.Flag(),
        WarrantyNotice = dice.Flag(),
        Losses = dice.Chance(50) ? [new() { Function = "function-5", Recovers = dice.Word<Recovery>() }] : [],
    };
}
