using System.Collections.Immutable;
using FixScore;

namespace PluginNamespace;

/// <summary>What <see cref="LookAlikeScrewsCriterion"/> says.</summary>
sealed class LookAlikeScrewsReasons(TeardownCase source)
{
    public static Reason NoScrews() => Reason.Of("no-screws", "The record says that there are no screws.", [Pointer.Root.Child("joints")]);

    public Reason Of(LookAlikeScrewsFacts facts) => Reason.Of(
        "look-alikes", "A screw can be mistaken for another in {mistakable} of {places} places.", facts.Mistakable.Select(source.At),
        ("mistakable", new Interval(facts.Mistakable.Length, facts.Mistakable.Length + facts.Open.Length)), ("places", facts.Screws.Length));

    public ImmutableArray<Missing> Missing(LookAlikeScrewsFacts facts) =>
        [.. facts.Open.Select(screw => new Missing(source.At(screw), "screw: exact drive, diameter and length"))];
}
