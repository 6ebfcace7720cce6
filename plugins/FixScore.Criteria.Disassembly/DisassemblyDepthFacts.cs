using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>How far in a part lies.</summary>
/// <param name="Judged">The way judged.</param>
/// <param name="Notification">Steps added for notifying the maker.</param>
/// <param name="Authorisation">Steps added for the maker's authorisation.</param>
sealed record DisassemblyDepthFacts(JudgedWays Judged, Interval Notification, Interval Authorisation)
{
    public Interval Added => Sum(Notification, Authorisation);

    public Interval Depth => Sum(Judged.Length, Added);

    public static DisassemblyDepthFacts Of(PartContext context)
    {
        var demands = context.Part.Inert
            ? new Serialisation { Notify = SerialAction.None, Authorise = SerialAction.None }
            : context.Part.Serialised ?? new();
        var cost = context.Get(DisassemblyDepthOptions.Cost) == DepthCost.Operations ? RouteCost.Operations : RouteCost.Steps;
        return new(
            JudgedWays.Of(context, cost),
            Steps(context, demands.Notify, context.Get(DisassemblyDepthOptions.NotificationSteps)),
            Steps(context, demands.Authorise, context.Get(DisassemblyDepthOptions.AuthorisationSteps)));
    }

    static Interval Steps(PartContext context, OneOf<SerialAction> demand, decimal steps) =>
        demand.IsUnknown && context.Get(DisassemblyDepthOptions.SerialisedUnknown) == WhenDemandUnknown.None
            ? (Interval)0
            : new(demand.Is(SerialAction.Remote) ? steps : 0, demand.MayBe(SerialAction.Remote) ? steps : 0);

    static Interval Sum(Interval a, Interval b) => new(a.Low + b.Low, a.High + b.High);
}
