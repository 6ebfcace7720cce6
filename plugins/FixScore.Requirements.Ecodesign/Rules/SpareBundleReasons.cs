using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What decides whether listed parts are sold only in bundles.</summary>
static class SpareBundleReasons
{
    public static Reason NotRecorded() => Reason.Of("spares-not-recorded", "The record does not say which spares are on offer.", [Pointer.Root]);

    public static Reason NoneOffered() => Reason.Of("no-listed-spares", "No spare of a listed part is on offer.", [Pointer.Root.Child("spares")]);

    public static Reason NoBundles(TeardownCase source, IEnumerable<Spare> spares) =>
        Reason.Of("no-bundles", "No spare is sold only in a bundle that the law rules out.", spares.Select(source.At));

    public static Reason Single(TeardownCase source, Spare spare, ImmutableArray<string> types) => Of(source, spare, types, "no-bundle", "The spare of {part} brings {types}, which the law allows together.");

    public static Reason Bundle(TeardownCase source, Spare spare, ImmutableArray<string> types) => Of(source, spare, types, "bundle", "The spare of {part} is sold only as a bundle of {types}.");

    public static Reason Unprotected(TeardownCase source, Spare spare, ImmutableArray<string> types, Reason ingress) => Reason.Of(
        "bundle-not-protected", "The spare of {part} is sold only as a bundle of {types}, and the device is not protected enough for that. {ingress}",
        [source.At(spare), .. ingress.Pointers], ("part", spare.Part), ("types", string.Join(", ", types)), ("ingress", ingress.Text));

    public static Reason CyclesUnknown(TeardownCase source, Spare spare, ImmutableArray<string> types) => Of(
        source, spare, types, "bundle-cycles-unknown",
        "The spare of {part} is sold only as a bundle of {types}, which is allowed when ingress protection and the cycles of buttons and connectors are high enough; a record does not hold them all.");

    static Reason Of(TeardownCase source, Spare spare, ImmutableArray<string> types, string code, string template) =>
        Reason.Of(code, template, [source.At(spare)], ("part", spare.Part), ("types", string.Join(", ", types)));
}
