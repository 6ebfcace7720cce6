using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>All that somebody else needs to get the same result: what was used, in which version, with which digest, and the score documents themselves.</summary>
sealed class ReproductionSection(CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public Section Of(ReportInput input) => new("To check this", [.. Blocks(input)]) { Anchor = "check" };

    IEnumerable<Block> Blocks(ReportInput input) =>
    [
        new Prose("Whoever has the records, the profiles and the same versions gets the same score documents, byte for byte."),
        new Verbatim(string.Join('\n', [.. input.Command is { } command ? [command] : (string[])[], .. input.Judgements.Select(Command)])),
        Digests("Records", input.Judgements.Select(each => (each.Record.Id, each.Score.Record.Digest))),
        Digests("Profiles", input.Judgements.SelectMany(each => each.Score.Bases.Prepend(each.Score.Profile)).Select(each => ($"{each.Id} {each.Version}", each.Digest))),
        Digests("Score documents", input.Judgements.Select(each => ($"{each.Record.Id}, {each.Score.Profile.Id}", each.Score.ComputeDigest()))),
        .. PluginFiles(input) is { IsEmpty: false } files ? [Digests("Plugin files, to be pinned", files)] : (Block[])[],
        new Attachments("The score documents, to be saved and verified", [.. input.Judgements.Select(each => new Attachment($"{each.Record.Id}.{each.Score.Profile.Id}.score.json", each.Score.ToJsonLine()))]),
        new Prose($"Kernel {input.Judgements[0].Score.KernelVersion}; plugins {Plugins(input)}.{Draws(input)}", Tone.Quiet),
    ];

    static string Command(Judgement each) => $"fixscore score {each.Record.Id}.json --profile {each.Score.Profile.Id}@{each.Score.Profile.Version} --json";

    static Grid Digests(string what, IEnumerable<(string Name, string Digest)> rows) =>
        new(what, [what, new("Digest", GridKind.Code)], [.. rows.Distinct().Select(row => ImmutableArray.Create<GridCell>(row.Name, row.Digest))]);

    static string Plugins(ReportInput input) => string.Join(", ", input.Judgements.SelectMany(each => each.Score.Plugins).Distinct()
        .OrderBy(plugin => plugin.Id, StringComparer.Ordinal).Select(plugin => $"{plugin.Id} {plugin.Version}"));

    static ImmutableArray<(string Name, string Digest)> PluginFiles(ReportInput input) =>
        [.. input.Judgements.SelectMany(each => each.Score.Plugins).Where(plugin => plugin.Digest is not null).OrderBy(plugin => plugin.Id, StringComparer.Ordinal)
            .SelectMany(plugin => plugin.Dependencies.Select(each => ($"{plugin.Id}, {each.File}", each.Digest)).Prepend(($"{plugin.Id} {plugin.Version}", plugin.Digest!)))];

    string Draws(ReportInput input) => input.Draws is { } draws ? $" Draws of weights: {shown.Number(draws.Count)}, {Word.Of(draws.Spread)}, seed {shown.Number(draws.Seed)}." : "";
}
