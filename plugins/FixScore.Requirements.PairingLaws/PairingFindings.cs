using System.Collections.Immutable;

namespace FixScore.Requirements.PairingLaws;

/// <summary>Findings of a law: one for each banned effect.</summary>
/// <remarks>
/// Not met when the effect is proven for any part. Met when it is ruled out for every part that can carry a code and is not
/// excepted. Everything else is unknown and says part by part why. Where the law does not apply, trials are not looked at;
/// where that is open, the finding is unknown and still says what trials show.
/// </remarks>
static class PairingFindings
{
    public static IEnumerable<Finding> Of(PairingLaw law, RequirementContext context)
    {
        var scope = PairingScope.Of(law, context);
        return Enum.GetValues<SwapEffect>().Select(effect => scope is { Status: FindingStatus.NotApplicable } not
            ? Made(law, effect, not.Status, not.Why)
            : Judged(law, effect, context.Case, scope?.Why));
    }

    static Finding Judged(PairingLaw law, SwapEffect effect, TeardownCase source, Reason? open)
    {
        var shown = source.Derive<SwapEffects>().All.Where(each => each.Effect == effect)
            .Select(each => each with { Shown = Biometrics.Under(law.Biometric, each) }).ToImmutableArray();
        var why = SwapEffectReasons.Of(source, shown);
        return open is null ? Made(law, effect, StatusOf(shown), why) : Made(law, effect, FindingStatus.Unknown, PairingScopeReasons.Both(open, why));
    }

    static FindingStatus StatusOf(ImmutableArray<PartEffect> shown) =>
        shown.IsEmpty ? FindingStatus.Unknown : shown.Min(each => each.Shown) switch
        {
            Shown.Proven => FindingStatus.NotMet,
            Shown.Excepted when shown.All(each => each.Shown == Shown.Excepted) => FindingStatus.NotApplicable,
            Shown.Excepted or Shown.Cleared => FindingStatus.Met,
            _ => FindingStatus.Unknown,
        };

    static Finding Made(PairingLaw law, SwapEffect effect, FindingStatus status, Reason why) => new(Word.Of(effect), law.Article, status, why);
}
