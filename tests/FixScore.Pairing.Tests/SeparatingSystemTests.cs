using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

/// <summary>Fixed plans of trials, as group testing knows them.</summary>
public sealed class SeparatingSystemTests
{
    // Separating systems (Katona 1966, J. Combin. Theory 1, from memory): 3 trials tell 7 candidates and "none" apart when
    // candidate i is in trial t just when bit t of i is set. The outcomes read as a number are the culprit, 0 is none.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Three_fixed_trials_name_one_culprit_of_seven_or_none(int culprit)
    {
        int[][] code = [[1, 3, 5, 7], [2, 3, 6, 7], [4, 5, 6, 7]];
        var context = Trials(7, code, culprit);
        var flagged = context.Trials.Where(trial => trial.Checks[0].Result.Is(SwapResult.Warning)).Select(trial => trial.Id).Joined();
        var alone = context.Parts.Where(part => part.Verdict != Verdict.Cleared && part.OfPart.Flags.Select(flag => flag.Trial.Id).Joined() == flagged);
        if (culprit == 0) Assert.All(context.Parts, part => Assert.Equal(Verdict.Cleared, part.Verdict));
        else Assert.Equal($"p{culprit}", Assert.Single(alone).Part.Id);
    }

    // Completely separating systems (Sperner 1928; Dickson 1969, from memory): 4 trials suffice for 6 candidates, each in
    // two of the trials, no candidate's trials within another's. Then one culprit is proven without assuming that it is one.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Four_fixed_trials_prove_one_culprit_of_six(int culprit)
    {
        int[][] code = [[1, 2, 3], [1, 4, 5], [2, 4, 6], [3, 5, 6]];
        var context = Trials(6, code, culprit);
        Assert.All(context.Parts, part => Assert.Equal(part.Part.Id == $"p{culprit}" ? Verdict.Paired : Verdict.Cleared, part.Verdict));
    }

    static ContextVerdicts Trials(int candidates, int[][] code, int culprit)
    {
        var parts = Enumerable.Range(1, candidates).Select(i => Part($"p{i}"));
        var trials = code.Select((swapped, t) => Swap(
            $"t{t}", swapped.Select(i => $"p{i}=b").Joined(), swapped.Contains(culprit) ? Warns() : Works()));
        return Assert.Single(Infer(Device([Board, .. parts], [], trials)).Contexts);
    }
}
