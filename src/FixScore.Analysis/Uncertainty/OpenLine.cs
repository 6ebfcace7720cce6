using System.Collections.Immutable;

namespace FixScore.Analysis.Uncertainty;

/// <summary>A line of a score whose value is not fully known, and what knowing it would be worth.</summary>
/// <param name="Path">Path of the line.</param>
/// <param name="Title">Its title.</param>
/// <param name="Missing">The observations that would narrow it.</param>
/// <param name="AtLow">The total if the line turned out to have its low end, all else open as it is.</param>
/// <param name="AtHigh">The total if it turned out to have its high end.</param>
/// <param name="Gain">By how much the width of the total would shrink at least at either end, in points; 0 where another rule hides it. More is worth more.</param>
public sealed record OpenLine(string Path, string Title, ImmutableArray<Missing> Missing, Interval AtLow, Interval AtHigh, decimal Gain);

/// <summary>A class and how probable it is.</summary>
/// <param name="Label">The class.</param>
/// <param name="Share">Share of the draws, 0 to 1.</param>
public sealed record ClassShare(string Label, decimal Share);
