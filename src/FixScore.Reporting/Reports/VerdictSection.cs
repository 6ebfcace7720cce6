using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Reports;

/// <summary>The verdict in a sentence, what limits the best, and the rankings as pictures.</summary>
sealed class VerdictSection(CultureInfo culture)
{
    const string Legend = "Solid: certain, whatever the open observations turn out to be. Hatched: depends on them. More is better.";

    static readonly ImmutableArray<GridColumn> Columns = [new("Device"), new("", GridKind.Bar), new("Place", GridKind.Number), new("Points", GridKind.Number)];

    readonly Shown shown = new(culture);
    readonly VerdictText verdict = new(culture);

    public Section Of(ImmutableArray<IReadOnlyList<Placing>> rankings)
    {
        var best = rankings[0][0].Judgement;
        return new("The verdict",
        [
            new Prose(Headline(rankings[0]), Tone.Lead),
            new Prose($"{verdict.Limit(best)} {verdict.Known(best)}".Trim()),
            .. rankings.SelectMany(Ranking),
        ])
        { Anchor = "verdict" };
    }

    string Headline(IReadOnlyList<Placing> ranked)
    {
        var best = ranked[0].Judgement;
        var points = verdict.Total(best);
        return ranked.Count == 1
            ? $"{Name(best)} gets {points}."
            : $"{Name(best)} {(ranked[0].Worst > 1 ? "leads, though not for certain" : $"is the most repairable of these {shown.Number(ranked.Count)}")}: {points}. {Rivals(ranked)}";
    }

    string Rivals(IReadOnlyList<Placing> ranked)
    {
        var open = ranked.Skip(1).Where(each => each.Best == 1).Select(each => Name(each.Judgement)).ToArray();
        return open.Length > 0
            ? $"{string.Join(", ", open)} may be level with it or above, until more is observed."
            : $"Next is {Name(ranked[1].Judgement)} with {shown.Points(ranked[1].Judgement.Score.Shown)}.";
    }

    IEnumerable<Block> Ranking(IReadOnlyList<Placing> ranked)
    {
        var profile = ranked[0].Judgement.Profile;
        var rules = $"By \u201C{profile.Title}\u201D, {profile.Id} {profile.Version}, {shown.Number(profile.Scale.Min)} to {shown.Number(profile.Scale.Max)}";
        yield return new Picture(RankingChart.Of(ranked, shown), RankingChart.Summary(ranked, shown), $"{rules}. {Legend}")
        {
            AsTable = new(rules, Columns, [.. ranked.Select(Row)]),
        };
        yield return Items.Of(profile.Notices, Tone.Mind);
    }

    ImmutableArray<GridCell> Row(Placing each) =>
        [Name(each.Judgement), new("") { Extent = new(each.Judgement.Score.Total, each.Judgement.Profile.Scale.Points) }, shown.Place(each), shown.Points(each.Judgement.Score.Shown)];

    static string Name(Judgement judgement) => PlainText.Of(judgement.Device, RecordTerms.LongestName);
}
