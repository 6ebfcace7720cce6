using FixScore.Records;

namespace FixScore.Pairing.Locks;

/// <summary>What is to be expected of a lost function, given when it is said to come back.</summary>
static class Expectation
{
    /// <summary>Whether the function must be at work again, whatever is not known.</summary>
    public static bool IsBack(OneOf<Recovery> recovers, LockState state, SwapProcedure? procedure) =>
        recovers.Possible().All(recovery => Resets(procedure).All(reset => ComesBack(recovery, state, reset)));

    /// <summary>Whether the function must still be lost, whatever is not known.</summary>
    public static bool IsLost(OneOf<Recovery> recovers, LockState state, SwapProcedure? procedure) =>
        recovers.Possible().All(recovery => Resets(procedure).All(reset => !ComesBack(recovery, state, reset)));

    static bool ComesBack(Recovery recovery, LockState state, bool reset) => recovery switch
    {
        Recovery.OnRelock => state == LockState.Relocked,
        Recovery.OnReset => reset,
        _ => false,
    };

    static bool[] Resets(SwapProcedure? procedure) => procedure is { } known ? [known == SwapProcedure.Reset] : [false, true];
}
