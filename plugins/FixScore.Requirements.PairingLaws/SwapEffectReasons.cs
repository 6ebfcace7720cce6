using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Requirements.PairingLaws;

/// <summary>What trials show of one effect, as a reason: the code is the weightiest thing shown, the text names every part that decides.</summary>
static class SwapEffectReasons
{
    public static Reason Of(TeardownCase source, ImmutableArray<PartEffect> effects)
    {
        if (effects.IsEmpty) return Reason.Of("no-part", "The record names no part but the main board that could be tied to it.", [Pointer.Root.Child("parts")]);
        var deciding = Deciding(effects);
        var clauses = deciding.GroupBy(each => each.Shown).Select(group => (Clause: ClauseOf(group.Key), Text: string.Join("; ", group.Select(TextOf)))).ToArray();
        return Reason.Of(
            Word.Of(deciding[0].Shown),
            string.Join(' ', clauses.Select(each => each.Clause.Template)),
            deciding.SelectMany(each => PlacesOf(source, each)).Distinct(),
            [.. clauses.Select(each => (each.Clause.Name, (Value)each.Text))]);
    }

    // What is proven decides alone; what leaves it open is named with what is excepted; only when nothing does, what works.
    static ImmutableArray<PartEffect> Deciding(ImmutableArray<PartEffect> effects)
    {
        var worst = effects.Min(each => each.Shown);
        var last = worst == Shown.Proven ? Shown.Proven : worst < Shown.Excepted ? Shown.Excepted : Shown.Cleared;
        return [.. effects.Where(each => each.Shown <= last).OrderBy(each => each.Shown)];
    }

    static (string Name, string Template) ClauseOf(Shown shown) => shown switch
    {
        Shown.Proven => ("proven", "Trials prove it: {proven}."),
        Shown.ExceptionOpen => ("exceptionOpen", "Whether an exception for biometric parts covers it is open: {exceptionOpen}."),
        Shown.AfterProcedure => ("afterProcedure", "Shown to work, but maybe only after a procedure, and which ones the law allows was not read: {afterProcedure}."),
        Shown.Dismissible => ("dismissible", "The alert can be dismissed, and whether only one that stays is banned was not read: {dismissible}."),
        Shown.Unsettled => ("unsettled", "Trials neither prove it nor rule it out: {unsettled}."),
        Shown.NotTried => ("notTried", "Not tried with the boot lock as delivered: {notTried}."),
        Shown.Excepted => ("excepted", "Allowed for a biometric part that is replaced by itself: {excepted}."),
        _ => ("cleared", "Parts of another unit work like the originals: {cleared}."),
    };

    static string TextOf(PartEffect effect)
    {
        var details = FlagsOf(effect).Select(flag => $"{flag.Check.Function}: {Word.Of(flag.Check.Result.Stated[0])} in trial {flag.Trial.Id}")
            .Concat(effect.Shown == Shown.AfterProcedure ? effect.Seen.Where(each => each.IsCleared).Select(ProcedureOf).Distinct() : []);
        var parts = string.Join(" together with ", effect.Parts.Select(part => part.Name ?? part.Id));
        return string.Join(", ", details) is { Length: > 0 } text ? $"{parts} ({text})" : parts;
    }

    static string ProcedureOf(SeenTrials seen) => seen.Procedure switch
    {
        null => "works, procedure not recorded",
        SwapProcedure.None => "works without one on other software",
        var known => $"works after {Word.Of(known.Value)}",
    };

    static IEnumerable<FlaggedCheck> FlagsOf(PartEffect effect) => effect.Seen.Where(each => each.IsTied).SelectMany(each => each.Found.Flags)
        .Where(flag => effect.Effect.IsShownBy(flag.Check) || effect.Shown != Shown.Proven && effect.Effect.MayBeShownBy(flag.Check));

    static IEnumerable<Pointer> PlacesOf(TeardownCase source, PartEffect effect) =>
    [
        .. effect.Parts.Select(source.At),
        .. effect.Seen.SelectMany(each => each.Trials.Trials.Where(trial => each.Found.Because.Contains(trial.Id))).Select(source.At),
        .. FlagsOf(effect).Select(flag => source.At(flag.Check)),
    ];
}
