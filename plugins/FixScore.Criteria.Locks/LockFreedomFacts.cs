using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Criteria.Locks;

/// <summary>Attempts to open the boot lock, in the order of the record; none when none was recorded.</summary>
sealed record LockFreedomFacts(ImmutableArray<OpeningFacts> Openings)
{
    public static LockFreedomFacts Of(TeardownCase source) =>
        new([.. source.Derive<LockCosts>().Trials.Where(cost => cost.Opens).Select(cost => new OpeningFacts(cost))]);
}

/// <summary>What one attempt to open the lock showed.</summary>
sealed record OpeningFacts(LockCost Cost)
{
    public LockTrial Trial => Cost.Trial;

    public ImmutableArray<LostFunction> Losses => Cost.Losses;

    /// <summary>Whether the lock may have been opened: only then do waiting, wiping and warranty cost anything.</summary>
    public bool MayBeOpen => Trial.Outcome.MayBe(LockOutcome.Done);

    public Interval WaitDays => (Trial.WaitDays ?? default).Within(0, decimal.MaxValue);

    public ImmutableArray<string> WipesData => WordsOf(Trial.WipesData);

    public ImmutableArray<string> WarrantyNotice => WordsOf(Trial.WarrantyNotice);

    static ImmutableArray<string> WordsOf(bool? flag) => flag switch
    {
        true => [LockFreedomOptions.Yes],
        false => [LockFreedomOptions.No],
        null => [LockFreedomOptions.No, LockFreedomOptions.Yes],
    };
}
