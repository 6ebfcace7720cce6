using System.Text.RegularExpressions;

namespace FixScore.Testing;

/// <summary>A criterion says of itself what a reader, a profile and this check need.</summary>
static partial class DescriptionLaws
{
    public static void Check(Bench bench)
    {
        var info = bench.Criterion.Info;
        if (bench.Criterion is not (IDeviceCriterion or IPartCriterion))
            bench.Report(ConformanceCodes.JudgesNothing, "", "The criterion judges neither devices nor parts.");
        if (!ReferenceEquals(info, bench.Criterion.Info))
            bench.Report(ConformanceCodes.InfoNotSame, "", "Info is another object at every call.");
        if (!RecordIds.IsSlug(info.Id)) bench.Report(ConformanceCodes.IdNotSlug, "", "The id '{id}' is not a slug.", ("id", info.Id));
        if (info.RuleVersion < 1) bench.Report(ConformanceCodes.RuleVersion, "", "The rule version is {version}, below 1.", ("version", info.RuleVersion));
        CheckTold(bench, "title", info.Title);
        CheckTold(bench, "measures", info.Measures);
        CheckTold(bench, "unit", info.Unit);
        CheckTold(bench, "source", info.Source);
        CheckReads(bench, info);
        CheckOptions(bench, info);
    }

    static void CheckTold(Bench bench, string member, string? text)
    {
        if (string.IsNullOrWhiteSpace(text)) bench.Report(ConformanceCodes.Undescribed, "", "'{member}' is empty.", ("member", member));
    }

    static void CheckReads(Bench bench, CriterionInfo info)
    {
        if (info.Reads.IsDefaultOrEmpty) CheckTold(bench, "reads", null);
        else
            foreach (var path in info.Reads.Where(path => RecordMembers.Read(path) is null))
                bench.Report(ConformanceCodes.ReadsUnknownMember, "", "The record format has no member '{path}'.", ("path", path));
    }

    static void CheckOptions(Bench bench, CriterionInfo info)
    {
        foreach (var option in info.Options)
        {
            if (string.IsNullOrWhiteSpace(option.Text)) Undocumented(bench, option, "has no text");
            if (!CamelCase().IsMatch(option.Name)) Undocumented(bench, option, "is not named in camelCase");
            if (info.Options.Count(each => each.Name == option.Name) > 1) Undocumented(bench, option, "stands twice");
            foreach (var share in SharesOf(option).Where(share => share is < 0 or > 1))
                bench.Report(ConformanceCodes.DefaultOutsideScale, "", "A default of the option '{option}' is {share}, not a share from 0 to 1.",
                    ("option", option.Name), ("share", share));
        }
    }

    static void Undocumented(Bench bench, Option option, string how) =>
        bench.Report(ConformanceCodes.OptionUndocumented, "", "The option '{option}' {how}.", ("option", option.Name), ("how", how));

    static IEnumerable<decimal> SharesOf(Option option) => option switch
    {
        Option<Bands> bands => bands.Default.Entries.Select(band => band.Points),
        Option<Levels> levels => levels.Default.Entries.Select(level => level.Points),
        _ => [],
    };

    [GeneratedRegex("^[a-z][a-zA-Z0-9]*\\z", RegexOptions.CultureInvariant)]
    private static partial Regex CamelCase();
}
