using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting;

/// <summary>A score as an assessor would note it down: each criterion, what was observed, which rule, how many points, what is missing. Thread safe.</summary>
/// <param name="culture">How numbers are written.</param>
public sealed class NotesText(CultureInfo culture)
{
    readonly Shown shown = new(culture);
    readonly VerdictText verdict = new(culture);
    readonly RuleText rules = new(new(culture));

    /// <summary>The notes, in the order of the profile; its notices come last.</summary>
    public ImmutableArray<NoteLine> Of(Judgement judgement) => [.. Criteria(judgement), .. Cautions(judgement)];

    /// <summary>The notes on criteria alone.</summary>
    public ImmutableArray<NoteLine> Criteria(Judgement judgement)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        return [.. judgement.Criteria.SelectMany(node => Criterion(judgement, node, isNew: told.Add(node.Id)))];
    }

    /// <summary>Closed gates, failed criteria, readings of the source, and the notices that go with every result.</summary>
    /// <param name="judgement">The judgement.</param>
    /// <param name="everyReading">Whether readings that change nothing are told one by one, and not only counted.</param>
    public ImmutableArray<NoteLine> Cautions(Judgement judgement, bool everyReading = true) =>
        [.. judgement.Score.Gates.Select(gate => Caution(verdict.Gate(gate))),
         .. judgement.Score.Faults.Select(fault => Caution($"The criterion at {fault.Node} failed ({fault.Code}); it counts as the whole scale.")),
         .. judgement.Score.Readings.Where(reading => everyReading || reading.Decisive).Select(reading => new NoteLine(0, NoteKind.Rule, Reading(reading))),
         .. everyReading ? [] : Idle(judgement.Score.Readings.Count(reading => !reading.Decisive)),
         .. judgement.Score.Notes.Select(Caution)];

    static NoteLine[] Idle(int readings) => readings == 0 ? [] :
        [new(0, NoteKind.Rule, $"{readings.ToString(CultureInfo.InvariantCulture)} {(readings == 1 ? "point" : "points")} on which the source is silent would give the same result in any reading.")];

    static NoteLine Caution(string text) => new(0, NoteKind.Caution, text);

    static string Reading(ScoreReading reading) =>
        $"{reading.Point.TrimEnd('.')}. Taken: {reading.Taken.TrimEnd('.')}. {(reading.Decisive ? "Another reading would change the result." : "Other readings give the same result.")}";

    IEnumerable<NoteLine> Criterion(Judgement judgement, ScoreNode node, bool isNew)
    {
        yield return new(0, NoteKind.Heading, $"{judgement.NameOf(node)}: {shown.Points(node.Shown)} points{Weight(node)}");
        foreach (var line in isNew ? Rule(judgement, node) : []) yield return line;
        foreach (var line in Lines(judgement, node, 1)) yield return line;
        foreach (var below in judgement.Below(node).Where(HasSomethingToSay))
        {
            yield return new(1, NoteKind.Heading, $"{RoleOf(node, below)}{below.Title}: {shown.Points(below.Shown)} points");
            foreach (var line in Lines(judgement, below, 2)) yield return line;
        }
    }

    // A rule that is asked about part after part is told once.
    IEnumerable<NoteLine> Rule(Judgement judgement, ScoreNode node)
    {
        var info = judgement.Profile.Nodes.OfType<LeafNode>().First(leaf => leaf.Id == node.Id).Criterion.Item.Info;
        return rules.Options(node.Options!).Prepend(rules.Of(info)).Select(text => new NoteLine(1, NoteKind.Rule, text));
    }

    string Weight(ScoreNode node) => node.Weight is { } weight ? $", weight {shown.Number(weight)}" : "";

    static bool HasSomethingToSay(ScoreNode node) => node.Reasons.Length + node.Missing.Length > 0;

    static string RoleOf(ScoreNode node, ScoreNode below) =>
        below.Path[(node.Path.Length + 1)..].Split('/') is [var role, _, ..] && role != below.Title ? $"{role}, " : "";

    IEnumerable<NoteLine> Lines(Judgement judgement, ScoreNode node, int level)
    {
        foreach (var reason in node.Reasons)
            yield return new(level, IsCaution(reason) ? NoteKind.Caution : NoteKind.Observation, $"{reason.Text}{Points(reason)}{Evidence(judgement, reason)}");
        foreach (var missing in VerdictText.Missing(judgement, node.Missing)) yield return new(level, NoteKind.Missing, missing);
    }

    string Points(ScoreReason reason) => reason.Points is { } points ? $" [{shown.Points(new Ends(points.Low, points.High))} points]" : "";

    static string Evidence(Judgement judgement, ScoreReason reason) =>
        reason.Pointers.IsEmpty ? "" : $" ({EvidenceText.Of(judgement.Record, reason.Pointers)})";

    static bool IsCaution(ScoreReason reason) => reason.Code.StartsWith("caution", StringComparison.Ordinal);
}
