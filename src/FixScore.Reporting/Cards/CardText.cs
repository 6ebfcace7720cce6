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

    public string Scale(ProfileScale scale) => $"a scale from {shown.Number(scale.Min)} to {shown.Number(scale.Max)}";

    /// <summary>The verdict in a sentence.</summary>
    public string Verdict(Judgement judgement) => $"{Points(judgement)} points on {Scale(judgement.Profile.Scale)}{Class(judgement.Score)}.";

    public string Known(Judgement judgement) => verdict.Known(judgement);

    /// <summary>Closed gates, then the line whose improvement would help most.</summary>
    public string Limit(Judgement judgement) => string.Join(' ', judgement.Score.Gates.Select(gate => verdict.Gate(gate).TrimEnd('.') + ".").Append(judgement.Limit is { } limit
        ? $"{judgement.NameOf(limit)}: {shown.Points(limit.Shown)} points. At its best the low end of the total would rise by {Number(limit.Headroom, judgement.Profile.Scale)}."
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
