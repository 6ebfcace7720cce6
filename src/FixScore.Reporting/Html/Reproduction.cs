namespace FixScore.Reporting.Html;

/// <summary>All that somebody else needs to get the same result: what was used, in which version, with which digest.</summary>
static class Reproduction
{
    static readonly (string, string)[] Columns = [("Name", "line"), ("Digest", "digest")];

    public static Markup Of(IReadOnlyCollection<Judgement> judgements) => Markup.Element("section", [
        Markup.Element("h2", ["To check this"]),
        Markup.Element("p", ["Whoever has the records, the profiles and the same versions gets the same score documents, byte for byte:"]),
        Markup.Element("pre", [string.Join('\n', judgements.Select(Command))]),
        Digests("Records", judgements.Select(each => (each.Record.Id, each.Score.Record.Digest))),
        Digests("Profiles", judgements.Select(each => ($"{each.Score.Profile.Id} {each.Score.Profile.Version}", each.Score.Profile.Digest))),
        Digests("Score documents", judgements.Select(each => ($"{each.Record.Id}, {each.Score.Profile.Id}", each.Score.ComputeDigest()))),
        Markup.Element("p", [$"Kernel {judgements.First().Score.KernelVersion}; plugins {Plugins(judgements)}."])]);

    static string Command(Judgement each) => $"fixscore score {each.Record.Id}.json --profile {each.Score.Profile.Id}@{each.Score.Profile.Version} --json";

    static Markup Digests(string caption, IEnumerable<(string Name, string Digest)> rows) =>
        Table.Of(caption, Columns, rows.Distinct().Select(row => (Markup[])[row.Name, Markup.Element("code", [row.Digest])]));

    static string Plugins(IEnumerable<Judgement> judgements) => string.Join(", ", judgements.SelectMany(each => each.Score.Plugins).Distinct()
        .OrderBy(plugin => plugin.Id, StringComparer.Ordinal).Select(plugin => $"{plugin.Id} {plugin.Version}"));
}
