using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>Design changes for <see cref="DisassemblyDepthCriterion"/>: a part that is reached first, and one that the maker's server is not asked about.</summary>
static class DisassemblyDepthChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context) =>
        [.. context.JudgedParts.Select(part => OwnWork.Of(context.Case, part)).OfType<OwnWork>().Select(work => work.ReachedFirst()).OfType<DesignChange>(),
            .. context.JudgedParts.Where(part => IsAskedAbout(context, part)).Select(part => Unasked(context.Case, part))];

    static bool IsAskedAbout(DeviceContext context, Part part) => !part.Inert && part.Serialised is { } demands
        && (demands.Notify.MayBe(SerialAction.Remote) && context.Get(DisassemblyDepthOptions.NotificationSteps) > 0
            || demands.Authorise.MayBe(SerialAction.Remote) && context.Get(DisassemblyDepthOptions.AuthorisationSteps) > 0);

    static DesignChange Unasked(TeardownCase source, Part part) => DesignPatch.Empty
        .Set(source.At(part), "serialised", new JsonObject { ["notify"] = Word.Of(SerialAction.None), ["authorise"] = Word.Of(SerialAction.None) })
        .As($"no-demands-{part.Id}", Reason.Of(
            "no-demands", "Ask for no notification and no authorisation when {part} is replaced.", [source.At(part)], ("part", part.Id)));
}
