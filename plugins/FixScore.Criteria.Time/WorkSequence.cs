using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Criteria.Time;

/// <summary>A sequence of BasicMOST, such as <c>A1 B0 G1 A1 B0 P3 A0</c>: letters for what is done, each with its index.</summary>
/// <param name="Text">The sequence as written.</param>
/// <param name="Steps">Letters and indices in order.</param>
sealed record WorkSequence(string Text, ImmutableArray<(char Parameter, int Index)> Steps)
{
    /// <summary>The sum of the indices, from which the time is made.</summary>
    public int Sum => Steps.Sum(step => step.Index);

    public static WorkSequence Parse(string text) =>
        new(text, [.. text.Split(' ').Select(step => (step[0], int.Parse(step.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture)))]);
}
