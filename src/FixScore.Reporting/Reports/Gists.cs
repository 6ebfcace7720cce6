using System.Globalization;
using FixScore.Disassembly;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>What sections of a device come to, in a few words: all that a reader sees who opens none.</summary>
sealed class Gists(TeardownCase source, CultureInfo culture)
{
    static readonly string[] Shown = [Roles.Battery, Roles.DisplayAssembly];

    readonly TeardownRecord record = source.Record;

    public string Routes() => string.Join(", ", Shown.SelectMany(role => record.Parts.Where(part => part.Role == role).Take(1)).Select(Steps));

    public string Screws()
    {
        var screws = record.Joints.Where(joint => joint.Screw is not null).ToArray();
        return screws.Length == 0 ? "no screws recorded" : $"{Count(screws.Select(joint => joint.Screw).Distinct().Count(), "kind", "kinds")} of screws in {Count(screws.Length, "joint", "joints")}";
    }

    public string Trials()
    {
        if (record.Swaps.Count == 0) return record.Swaps.IsRecorded ? "none made" : "not recorded";
        var verdicts = source.Derive<PairingVerdicts>().Contexts.SelectMany(context => context.Parts).GroupBy(part => part.Part.Id)
            .Select(part => part.Select(each => each.Verdict).OrderBy(Weight).First()).ToArray();
        return string.Join(", ", new[] { Verdict.Paired, Verdict.Suspect, Verdict.Cleared, Verdict.Untested }
            .Select(verdict => (Verdict: verdict, Count: verdicts.Count(each => each == verdict))).Where(each => each.Count > 0)
            .Select(each => $"{each.Count.ToString(culture)} {Word.Of(each.Verdict)}"));
    }

    public string Locks() => record.Locks.Count == 0 ? (record.Locks.IsRecorded ? "no trial made" : "not recorded") : Count(record.Locks.Count, "trial", "trials");

    public string Documents() => record.Documentation.Count == 0 ? "not recorded"
        : $"{record.Documentation.Select(document => document.Subject).Distinct().Count().ToString(culture)} of {Enum.GetValues<DocumentSubject>().Length.ToString(culture)} kinds";

    public string Spares() => record.Spares.Count == 0 ? "not recorded" : Count(record.Spares.Count, "offer recorded", "offers recorded");

    public string Requirements(IEnumerable<Finding> findings)
    {
        var all = findings.ToArray();
        return string.Join(", ", new[] { (FindingStatus.NotMet, "not met"), (FindingStatus.Unknown, "unknown"), (FindingStatus.Met, "met"), (FindingStatus.NotApplicable, "do not apply") }
            .Select(each => (Count: all.Count(finding => finding.Status == each.Item1), Text: each.Item2)).Where(each => each.Count > 0).Select(each => $"{each.Count.ToString(culture)} {each.Text}"));
    }

    string Steps(Part part) => source.RouteTo(part.Id) switch
    {
        { Reachability: Reachability.Reachable, Steps: { } steps } => $"{RecordTerms.Name(part.Role)} in {new Shown(culture).Points(steps)} {(steps.High == 1 ? "step" : "steps")}",
        { Reachability: Reachability.Unknown } => $"{part.Role} not known",
        _ => $"{part.Role} only with damage",
    };

    // The worst that any context proves is what a reader must hear first.
    static int Weight(Verdict verdict) => verdict switch { Verdict.Paired => 0, Verdict.Suspect => 1, Verdict.Cleared => 2, _ => 3 };

    string Count(int count, string one, string many) => $"{count.ToString(culture)} {(count == 1 ? one : many)}";
}
