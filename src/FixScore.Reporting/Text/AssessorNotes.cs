using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting;

/// <summary>What a line of notes is.</summary>
public enum NoteKind
{
    /// <summary>A heading.</summary>
    Heading,

    /// <summary>The rule that was applied.</summary>
    Rule,

    /// <summary>What was observed.</summary>
    Observation,

    /// <summary>What would narrow the score.</summary>
    Missing,

    /// <summary>A caution or notice.</summary>
    Caution,
}

/// <summary>A line of notes: plain text, not yet wrapped or escaped.</summary>
/// <param name="Level">How far it is set in, from 0.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The text. May hold text of the record, which nobody has checked.</param>
public sealed record NoteLine(int Level, NoteKind Kind, string Text);

/// <summary>A score as an assessor would note it down: each criterion, what was observed, which rule, how many points, what is missing.</summary>
/// <param name="culture">How numbers are written.</param>
public sealed class AssessorNotes(CultureInfo culture)
{
    readonly Shown shown = new(culture);
    readonly RuleText rules = new(new(culture));

    /// <summary>The notes, in the order of the profile.</summary>
    public ImmutableArray<NoteLine> Of(Judgement judgement) =>
        [.. judgement.Score.Gates.Select(gate => new NoteLine(0, NoteKind.Caution, GateText(gate))),
         .. judgement.Criteria.SelectMany(node => Criterion(judgement, node)),
         .. judgement.Score.Faults.Select(fault => new NoteLine(0, NoteKind.Caution, $"The criterion at {fault.Node} failed ({fault.Code}); it counts as the whole scale.")),
         .. judgement.Score.Readings.Select(reading => new NoteLine(0, NoteKind.Rule, ReadingText(reading))),
         .. judgement.Score.Notes.Select(note => new NoteLine(0, NoteKind.Caution, note))];

    /// <summary>What a closed gate says.</summary>
    public string GateText(ScoreGate gate) =>
        $"Capped at {shown.Number(gate.Cap)}{(gate.Ends == GateEnds.Low ? " at the low end" : "")}: {gate.Reason}";

    string ReadingText(ScoreReading reading) =>
        $"{reading.Point} Taken: {reading.Taken} {(reading.Decisive ? "Another reading would change the result." : "Other readings give the same result.")}";

    IEnumerable<NoteLine> Criterion(Judgement judgement, ScoreNode node)
    {
        yield return new(0, NoteKind.Heading, $"{node.Title}: {shown.Points(node.Shown)} points{Weight(node)}");
        var info = judgement.Profile.Nodes.OfType<LeafNode>().First(leaf => leaf.Id == node.Id).Criterion.Item.Info;
        yield return new(1, NoteKind.Rule, RuleText.Of(info));
        foreach (var option in rules.Options(node.Options!)) yield return new(1, NoteKind.Rule, option);
        foreach (var line in Lines(judgement, node, 1)) yield return line;
        foreach (var below in judgement.Below(node).Where(HasSomethingToSay))
        {
            yield return new(1, NoteKind.Heading, $"{RoleOf(node, below)}{below.Title}: {shown.Points(below.Shown)} points");
            foreach (var line in Lines(judgement, below, 2)) yield return line;
        }
    }

    string Weight(ScoreNode node) => node.Weight is { } weight ? $", weight {shown.Number(weight)}" : "";

    static bool HasSomethingToSay(ScoreNode node) => node.Reasons.Length + node.Missing.Length > 0;

    static string RoleOf(ScoreNode node, ScoreNode below) =>
        below.Path[(node.Path.Length + 1)..].Split('/') is [var role, _, ..] ? $"{role}, " : "";

    IEnumerable<NoteLine> Lines(Judgement judgement, ScoreNode node, int level)
    {
        foreach (var reason in node.Reasons)
            yield return new(level, IsCaution(reason) ? NoteKind.Caution : NoteKind.Observation, $"{reason.Text}{PointsOf(reason)} ({Shown.Evidence(judgement.Record, reason.Pointers)})");
        foreach (var missing in node.Missing)
            yield return new(level, NoteKind.Missing, $"{missing.What} ({(missing.At.Text.Length == 0 ? "record" : missing.At.Text)})");
    }

    string PointsOf(ScoreReason reason) => reason.Points is { } points ? $" [{shown.Points(points)} points]" : "";

    static bool IsCaution(ScoreReason reason) => reason.Code.StartsWith("caution", StringComparison.Ordinal);
}
