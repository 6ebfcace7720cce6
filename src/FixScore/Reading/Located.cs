namespace FixScore;

/// <summary>A problem with its place in the text.</summary>
/// <param name="Problem">The problem.</param>
/// <param name="Line">Line, from 1; 0 when there is no text, as for records made in code.</param>
/// <param name="Column">Column in characters, from 1; 0 when there is no text.</param>
/// <param name="Source">The line of text itself, shortened where it is long; empty when there is no text.</param>
/// <param name="Length">How many characters of the line are meant; at least 1.</param>
public sealed record LocatedProblem(Problem Problem, int Line, int Column, string Source = "", int Length = 1);
