using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>The rules in force, once for all devices: what each criterion measures, where it comes from, the numbers chosen.</summary>
sealed class RulesSection(CultureInfo culture)
{
    readonly RuleText rules = new(new(culture));

    public Section Of(ReportInput input) =>
        new("The rules in full", [.. input.Judgements.DistinctBy(each => each.Score.Profile).Select(Profile)]) { Anchor = "rules-in-full" };

    Section Profile(Judgement judgement)
    {
        var profile = judgement.Profile;
        return new($"\u201C{profile.Title}\u201D, {profile.Id} {profile.Version}",
        [
            .. profile.Note is { } note ? [new Prose(note)] : (Block[])[],
            .. judgement.Criteria.DistinctBy(node => node.Id).Select(node => Criterion(judgement, node)),
        ])
        { IsFolded = true, Gist = string.Create(CultureInfo.InvariantCulture, $"{judgement.Criteria.DistinctBy(node => node.Id).Count()} criteria with sources and options") };
    }

    Section Criterion(Judgement judgement, ScoreNode node)
    {
        var leaf = judgement.Profile.Nodes.OfType<LeafNode>().First(each => each.Id == node.Id);
        return new(leaf.Title ?? leaf.Id, [new Prose(rules.Of(leaf.Criterion.Item.Info)), Items.Of(rules.Options(node.Options!), Tone.Quiet)]);
    }
}
