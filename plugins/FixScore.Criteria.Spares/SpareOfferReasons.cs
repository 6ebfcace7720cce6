using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What is said of a part's spares whatever is measured.</summary>
sealed class SpareOfferReasons(PartContext context)
{
    public Reason NoSpares() => Reason.Of("no-spares", "The record says that there are no spares.", [Pointer.Root.Child("spares")])
        with { Points = context.Scale.Min };

    public Reason NotSold(Spare spare) => Reason.Of(
        "spare-not-sold", "The spare for {part} is not sold to anybody.", [context.Case.At(spare)], ("part", spare.Part))
        with { Points = context.Scale.Min };

    /// <summary>What would narrow the answer.</summary>
    /// <param name="spares">The spares.</param>
    /// <param name="open">Members that are not known of a spare, besides its audience.</param>
    public IEnumerable<Missing> Missing(PartSpares spares, Func<Spare, IEnumerable<string>> open)
    {
        if (!context.Case.Record.Spares.IsRecorded) return [new(Pointer.Root, "spares")];
        if (spares.IsUnknown) return [new(context.Case.At(spares.Part), "a spare for it")];
        return [.. spares.Listed.Where(spare => !spare.IsNotSold()).SelectMany(Of), .. Joints()];

        IEnumerable<Missing> Of(Spare spare) => (spare.Audience.MayBe(Audience.Nobody) ? open(spare).Prepend("audience") : open(spare))
            .Select(what => new Missing(context.Case.At(spare), what));

        IEnumerable<Missing> Joints() => spares.Possible.IsEmpty ? [] : [new(Pointer.Root, "joints")];
    }
}
