using FixScore.Records;

namespace FixScore.Requirements.PairingLaws;

/// <summary>What pairing may not do to a replaced part, alike in all three laws. The words are the rules' names.</summary>
enum SwapEffect
{
    /// <summary>The part cannot be installed or does not work.</summary>
    BlockedPart,

    /// <summary>Function or performance is reduced.</summary>
    ReducedFunction,

    /// <summary>A misleading alert is shown.</summary>
    MisleadingAlert,
}

/// <summary>Which result of a check shows which effect. Our reading: a trial's result stands for one effect.</summary>
static class EffectReading
{
    public static bool IsShownBy(this SwapEffect effect, FunctionCheck check) => check.Result.Is(effect switch
    {
        SwapEffect.BlockedPart => SwapResult.Refused,
        SwapEffect.ReducedFunction => SwapResult.Degraded,
        _ => SwapResult.Warning,
    });

    // A notice is an alert that can be dismissed; no law was read to say that this alone makes it allowed.
    public static bool MayBeShownBy(this SwapEffect effect, FunctionCheck check) =>
        effect == SwapEffect.MisleadingAlert && check.Result.Is(SwapResult.Notice);
}
