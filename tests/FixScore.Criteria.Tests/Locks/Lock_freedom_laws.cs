using FixScore.Criteria.Locks;

namespace FixScore.Criteria.Tests.Locks;

public sealed class Lock_freedom_laws
{
    static readonly LockFreedomCriterion Criterion = new();

    static readonly Gen<LockTrial> Trials = Gen.Select(
        Gen.Enum<LockOutcome>(), Gen.Int[0, 200], Gen.Bool, Gen.Bool, Gen.Enum<Recovery>().Array[0, 4], (outcome, days, wipes, notice, recoveries) => new LockTrial
        {
            Id = "unlock", Unit = "unit-a", From = LockState.Locked, To = LockState.Unlocked, Outcome = outcome, WaitDays = days, WipesData = wipes, WarrantyNotice = notice,
            Losses = [.. recoveries.Select((recovers, i) => new FunctionLoss { Function = $"function-{i}", Recovers = recovers })],
        });

    static readonly Gen<(Option, object)[]> Settings = Gen.Select(
        Gen.Enum<SeveralTrials>(), Gen.Enum<WhenNoLevel>(), (several, noLevel) => new (Option, object)[] { (LockFreedomOptions.Several, several), (Options.NoLevel, noLevel) });

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Trials.Array[1, 3], Settings, Gen.Int[1, 31]).Sample((trials, settings, mask) =>
        Assert.True(Score([Opened(trials[0], mask), .. trials[1..]], settings).Contains(Score(trials, settings))));

    [Fact]
    public void A_range_of_days_contains_what_it_may_be() => Gen.Select(Trials, Settings, Gen.Int[0, 50], Gen.Int[0, 50]).Sample((trial, settings, below, above) =>
    {
        var days = trial.WaitDays!.Value.Min!.Value;
        var range = trial with { WaitDays = new(Math.Max(0, days - below), days + above) };
        Assert.True(Score([range], settings).Contains(Score([trial], settings)));
    });

    [Fact]
    public void A_further_loss_or_a_day_of_waiting_never_raises_the_score() => Gen.Select(Trials, Gen.Enum<Recovery>()).Sample((trial, recovers) =>
    {
        var costlier = trial with { WaitDays = trial.WaitDays!.Value.Min + 1 is { } days ? days : null, Losses = trial.Losses.Add(new() { Function = "more", Recovers = recovers }) };
        Assert.True(Score([costlier], []).High <= Score([trial], []).High);
    });

    static Interval Score(LockTrial[] trials, (Option, object)[] settings) =>
        Criterion.On(Sample.Record(Sample.Part("frame")) with { Locks = EntryList.Of(trials.Select((trial, i) => trial with { Id = $"unlock-{i}" }).ToImmutableArray()) }, settings).Known();

    static LockTrial Opened(LockTrial trial, int mask) => trial with
    {
        Outcome = (mask & 1) > 0 ? default : trial.Outcome,
        WaitDays = (mask & 2) > 0 ? null : trial.WaitDays,
        WipesData = (mask & 4) > 0 ? null : trial.WipesData,
        WarrantyNotice = (mask & 8) > 0 ? null : trial.WarrantyNotice,
        Losses = (mask & 16) > 0 ? [.. trial.Losses.Select(loss => loss with { Recovers = default })] : trial.Losses,
    };
}
