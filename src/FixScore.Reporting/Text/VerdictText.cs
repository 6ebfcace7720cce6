using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting;

/// <summary>A score in a few sentences. Text may hold text of the record, which nobody has checked. Thread safe.</summary>
/// <param name="culture">How numbers are written.</param>
public sealed class VerdictText(CultureInfo culture)
{
    readonly Shown shown = new(culture);

    /// <summary>The total, its scale and its class.</summary>
    public string Total(Judgement judgement) =>
        $"{shown.Points(judgement.Score.Shown)} points on a scale from {shown.Number(judgement.Profile.Scale.Min)} to {shown.Number(judgement.Profile.Scale.Max)}{Class(judgement.Score)}";

    /// <summary>How much of it is known for certain.</summary>
    public string Known(Judgement judgement) => $"{shown.Percent(judgement.Score.Coverage)} of the weight is fully known.";

    /// <summary>What limits the total most; empty when nothing does.</summary>
    public string Limit(Judgement judgement) => judgement.Limit is { } limit
        ? $"What limits it most: {judgement.NameOf(limit)}, {shown.Points(limit.Shown)} points. At its best the low end of the total would rise by {shown.Short(limit.Headroom)}."
        : "";

    /// <summary>What a closed gate says.</summary>
    public string Gate(ScoreGate gate) =>
        $"Capped at {shown.Number(gate.Cap)}{(gate.Ends == GateEnds.Low ? " at the low end" : "")}: {gate.Reason}";

    /// <summary>What would narrow a score: each observation once, with all places that lack it, in the order of the lines.</summary>
    public static ImmutableArray<string> Missing(Judgement judgement) => Missing(judgement, judgement.Score.Nodes.SelectMany(node => node.Missing));

    /// <summary>The same for some of it.</summary>
    public static ImmutableArray<string> Missing(Judgement judgement, IEnumerable<Missing> missing) =>
        [.. missing.GroupBy(each => each.What, each => each.At, StringComparer.Ordinal).Select(each => $"{each.Key} ({EvidenceText.Of(judgement.Record, [.. each])})")];

    static string Class(ScoreDocument score) => score.Class is not { } range ? ""
        : range.Low == range.High ? $", \u201C{range.Low}\u201D" : $", \u201C{range.Low}\u201D to \u201C{range.High}\u201D";
}
