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
