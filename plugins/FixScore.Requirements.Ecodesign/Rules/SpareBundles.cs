using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(1): listed parts are not sold only in bundles of several listed types, with the exceptions of the law.</summary>
/// <remarks>
/// A spare brings its part, what is replaced with it and what it is only sold with. A hinge and its folding mechanism are one
/// type here. How often buttons and connectors can be used is not in a record: what only that exception would allow is unknown.
/// </remarks>
static class SpareBundles
{
    const string Microphone = "microphone", Speaker = "speaker", ChargingPort = "charging-port", Audio = "external-audio-connector";

    // May be part of a larger assembly that lasts long enough and is protected (read).
    static readonly ImmutableArray<string> InLargerAssembly = [Microphone, Speaker, "button", Audio, ChargingPort];

    public static Requirement Of(EcodesignDevice device) => device.OfSpares("spares-not-bundled", "1.1(1)", () => Judge(device));

    static Answer Judge(EcodesignDevice device)
    {
        if (!device.Record.Spares.IsRecorded) return Answer.Unknown(SpareBundleReasons.NotRecorded());
        var offered = device.Record.Spares.Where(spare => !spare.Audience.Is(Audience.Nobody) && TypesOf(device, spare).Length > 0).ToArray();
        return offered.Length == 0
            ? Answer.NotApplicable(SpareBundleReasons.NoneOffered())
            : Answer.All([.. offered.GroupBy(spare => spare.Part).Select(spares => Answer.Any(spares.Select(spare => Judge(device, spare)))), .. NotListed(device)])
                .WhenMet(SpareBundleReasons.NoBundles(device.Case, offered));
    }

    static IEnumerable<Answer> NotListed(EcodesignDevice device) =>
        from part in device.Record.Parts
        where ListedParts.All.Contains(part.Role)
        let bought = device.Case.Derive<PartGroups>().Of(part.Id)
        where !device.Record.Spares.Any(spare => bought.Holds(spare.Part))
        select Answer.Unknown(SpareReasons.NotListed(device.Case, part));

    static Answer Judge(EcodesignDevice device, Spare spare)
    {
        var types = TypesOf(device, spare);
        var counted = Without(types, Microphone, Speaker, ChargingPort);
        counted = Without(counted, Audio, ChargingPort);
        if (counted.Length < 2) return Answer.Of(true, SpareBundleReasons.Single(device.Case, spare, types));
        if (counted.RemoveRange(InLargerAssembly).Length > 1) return Answer.Of(false, SpareBundleReasons.Bundle(device.Case, spare, types));
        var ingress = BatteryEndurance.Ingress(device);
        return ingress.Status == FindingStatus.NotMet
            ? Answer.Of(false, SpareBundleReasons.Unprotected(device.Case, spare, types, ingress.Why))
            : Answer.Unknown(SpareBundleReasons.CyclesUnknown(device.Case, spare, types));
    }

    static ImmutableArray<string> Without(ImmutableArray<string> types, string inner, params string[] carriers) =>
        carriers.Any(types.Contains) ? types.Remove(inner) : types;

    static ImmutableArray<string> TypesOf(EcodesignDevice device, Spare spare) =>
    [
        .. spare.OnlyBundledWith.Prepend(spare.Part)
            .SelectMany(part => device.Case.Derive<PartGroups>().Of(part).Parts)
            .Select(part => part.Role).Where(role => ListedParts.All.Contains(role)).Distinct(StringComparer.Ordinal),
    ];
}
