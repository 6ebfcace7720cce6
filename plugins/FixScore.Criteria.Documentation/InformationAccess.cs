using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>Who gets repair information and at what cost, worst first; the words of option <c>levels</c>.</summary>
enum InformationAccess
{
    None,
    ProfessionalsReasonableFee,
    ProfessionalsFree,
    PublicFree,
}

/// <summary>Everything that access can still be, lowest first, each once.</summary>
/// <remarks>What is combined is taken as independent.</remarks>
static class PossibleAccess
{
    public static ImmutableArray<InformationAccess> Any { get; } = [.. Enum.GetValues<InformationAccess>()];

    public static ImmutableArray<InformationAccess> Of(Document document) =>
        Sorted(document.Audience.Possible().SelectMany(_ => document.Cost.Possible(), AccessOf));

    /// <summary>What the best of several can be.</summary>
    public static ImmutableArray<InformationAccess> Best(ImmutableArray<ImmutableArray<InformationAccess>> all) =>
        Sorted(all.SelectMany(each => each).Where(access => all.All(each => each[0] <= access)));

    /// <summary>What the worst of several can be.</summary>
    public static ImmutableArray<InformationAccess> Worst(ImmutableArray<ImmutableArray<InformationAccess>> all) =>
        Sorted(all.SelectMany(each => each).Where(access => all.All(each => each[^1] >= access)));

    /// <summary>The same where it is enough that professionals get it free.</summary>
    public static ImmutableArray<InformationAccess> FreeIsEnough(ImmutableArray<InformationAccess> all) =>
        Sorted(all.Select(access => access == InformationAccess.ProfessionalsFree ? InformationAccess.PublicFree : access));

    static InformationAccess AccessOf(Audience audience, DocumentCost cost) => (audience, cost) switch
    {
        (Audience.Authorised or Audience.Nobody, _) or (_, DocumentCost.Fee) => InformationAccess.None,
        (_, DocumentCost.ReasonableFee) => InformationAccess.ProfessionalsReasonableFee,
        (Audience.Public, _) => InformationAccess.PublicFree,
        _ => InformationAccess.ProfessionalsFree,
    };

    static ImmutableArray<InformationAccess> Sorted(IEnumerable<InformationAccess> all) => [.. all.Distinct().Order()];
}
