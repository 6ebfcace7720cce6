using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>The report in words and pictures, the same for every form.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Blocks">What stands below it.</param>
sealed record ReportDocument(string Title, ImmutableArray<Block> Blocks)
{
    const int MostNamed = 3;

    public static ReportDocument Of(ReportInput input, CultureInfo culture, CancellationToken cancellation)
    {
        if (input.Judgements.IsDefaultOrEmpty) throw new ArgumentException("There is nothing to report.", nameof(input));
        var rankings = Rankings(input);
        var devices = new DeviceSection(culture, cancellation);
        return new(input.Title ?? TitleOf(rankings[0]),
        [
            .. input.Introduction.Length > 0 ? [new Prose(input.Introduction)] : (Block[])[],
            new VerdictSection(culture).Of(rankings),
            .. rankings[0].Select(each => devices.Of(
                [.. rankings.Select(ranking => ranking.First(other => other.Judgement.Record.Id == each.Judgement.Record.Id).Judgement)],
                [.. input.Requirements.Where(set => set.Record == each.Judgement.Record.Id)])),
            .. new ComparisonSection(culture).Of(input, rankings),
            .. new SpreadSection(culture).Of(input),
            .. new GenerationSection(culture).Of(input),
            CautionSection.Of(input),
            new RulesSection(culture).Of(input),
            new ReproductionSection(culture).Of(input),
        ]);
    }

    static ImmutableArray<IReadOnlyList<Placing>> Rankings(ReportInput input) =>
        [.. input.Judgements.GroupBy(each => each.Score.Profile).Select(Placing.Of)];

    static string TitleOf(IReadOnlyList<Placing> ranked)
    {
        var names = ranked.Take(MostNamed).Select(each => PlainText.Of(each.Judgement.Device, RecordTerms.LongestName)).ToArray();
        var others = ranked.Count - names.Length;
        return $"How repairable: {string.Join(", ", names)}{(others > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {others} more") : "")}";
    }
}
