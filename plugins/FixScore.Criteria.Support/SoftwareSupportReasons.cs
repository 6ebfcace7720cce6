using System.Globalization;
using FixScore.Records;

namespace FixScore.Criteria.Support;

/// <summary>What <see cref="SoftwareSupportCriterion"/> says.</summary>
static class SoftwareSupportReasons
{
    static readonly Pointer Support = Pointer.Root.Child("support");

    public static Reason NothingAsked() => Reason.Of("no-kinds", "The profile asks for no kind of update.", []);

    public static Reason Shortest(SoftwareSupportFacts facts, Interval points) => Reason.Of(
        "update-years", "Updates ({kinds}) are promised for {years}, counted from {from}.", [Support],
        ("kinds", string.Join(", ", facts.Kinds.Select(kind => kind.Kind))), ("years", Shown(facts.Recorded)), ("from", Shown(facts.CountedFrom)))
        with { Points = points };

    public static IEnumerable<Reason> Counting(SoftwareSupportFacts facts)
    {
        if (facts.IsCountedAsAsked) yield break;
        yield return facts.CountedFrom.MayBe(facts.Asked!.Value)
            ? Reason.Of("counting-unknown", "Whether the years count from {asked} is not known.", [Support], ("asked", Word.Of(facts.Asked.Value)))
            : Reason.Of(
                "counted-from-other", "Years counted from {from} cannot be converted into years from {asked}.", [Support],
                ("from", Shown(facts.CountedFrom)), ("asked", Word.Of(facts.Asked.Value)));
    }

    public static IEnumerable<Missing> Missing(SoftwareSupportFacts facts)
    {
        if (!facts.IsRecorded) return [new(Pointer.Root, "support")];
        var open = facts.Kinds.Where(kind => kind.Years?.IsExact != true).Select(kind => kind.Kind.EndsWith("updates", StringComparison.Ordinal) ? $"years of {kind.Kind}" : $"years of {kind.Kind} updates");
        return (facts.IsCountedAsAsked ? open : open.Append($"years counted from {Word.Of(facts.Asked!.Value)}")).Select(what => new Missing(Support, what));
    }

    static Value Shown(Interval years)
    {
        if (years.High < SoftwareSupportFacts.Endless) return Value.Of(years, "years");
        return years.Low == 0 ? "an unknown time" : string.Create(CultureInfo.InvariantCulture, $"{years.Low:0.####} years or more");
    }

    static string Shown(OneOf<CountedFrom> from) =>
        from.IsUnknown ? "an unknown event" : string.Join(" or ", from.Stated.Select(Word.Of));
}
