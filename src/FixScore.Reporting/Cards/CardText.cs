using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>What a card says.</summary>
sealed class CardText(CultureInfo culture)
{
    public const string Legend = "Solid: certain. Hatched: depends on what was not observed.";

    readonly Shown shown = new(culture);
    readonly VerdictText verdict = new(culture);

    public string Place(Placing placing) => shown.Place(placing);

    public string Points(Judgement judgement) => shown.Points(judgement.Score.Shown);

    /// <summary>A number of a drawing: the shorter the scale the finer.</summary>
    public string Number(decimal value, ProfileScale scale) => value.ToString(scale.Max - scale.Min > 20 ? "0.#" : "0.##", culture);

    public string Range(decimal low, decimal high, ProfileScale scale) =>
        (Number(low, scale), Number(high, scale)) is var (from, to) && from == to ? from : $"{from} to {to}";

    /// <summary>What points mean, to follow the title of a profile.</summary>
    public string Meaning(Profile profile) => $": points from {shown.Number(profile.Scale.Min)} to {shown.Number(profile.Scale.Max)}, more is better";

    /// <summary>A number below the ruler of a scale that is divided into equal parts.</summary>
    public string Tick(ProfileScale scale, int tick, int ticks) => Number(scale.Min + (scale.Max - scale.Min) * tick / ticks, scale);

    /// <summary>The verdict in a sentence.</summary>
    public string Verdict(Judgement judgement) => $"{Points(judgement)} points{Class(judgement.Score)}.";

    public string Known(Judgement judgement) => $"{Legend} {verdict.Known(judgement)}";

    /// <summary>Closed gates, then the line whose improvement would help most.</summary>
    public string Limit(Judgement judgement) => string.Join(' ', judgement.Score.Gates.Select(gate => verdict.Gate(gate).TrimEnd('.') + ".").Append(judgement.Limit is { } limit
        ? $"The low end of the total would rise by {Number(limit.Headroom, judgement.Profile.Scale)} if this were at its best: {NameOf(judgement, limit)}, {shown.Points(limit.Shown)} points."
        : judgement.Score.Gates.IsEmpty ? "No single line: the low end would not rise if one alone were at its best." : "").Where(text => text.Length > 0));

    /// <summary>The ranking in a sentence.</summary>
    public static string Headline(IReadOnlyList<Placing> ranked)
    {
        var first = ranked.Where(each => each.Best == 1).ToArray();
        return ranked.Count == 1 ? ranked[0].Judgement.Device
            : first.Length == 1 ? $"{first[0].Judgement.Device} comes first of {ranked.Count.ToString(CultureInfo.InvariantCulture)}"
            : first.All(each => each.Worst == 1) ? $"{Several(first.Length)} share the first place"
            : $"First place is open between {Several(first.Length).ToLowerInvariant()}";
    }

    // What stands between the first and the last title is in the report.
    static string NameOf(Judgement judgement, ScoreNode node) =>
        judgement.NameOf(node) is { Length: > 80 } && judgement.Above(node).Skip(1).FirstOrDefault() is { } first ? $"{first.Title} \u2026 {node.Title}" : judgement.NameOf(node);

    static string Several(int devices) => devices switch
    {
        2 => "Two devices",
        3 => "Three devices",
        4 => "Four devices",
        5 => "Five devices",
        6 => "Six devices",
        _ => $"{devices.ToString(CultureInfo.InvariantCulture)} devices",
    };

    static string Class(ScoreDocument score) => score.Class is not { } range ? ""
        : range.Low == range.High ? $", class \u201C{range.Low}\u201D" : $", class \u201C{range.Low}\u201D to \u201C{range.High}\u201D";
}
