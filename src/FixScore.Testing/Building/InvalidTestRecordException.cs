using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>A test built a record that no assessor could have written.</summary>
/// <param name="problems">Everything that is wrong with it.</param>
public sealed class InvalidTestRecordException(ImmutableArray<Problem> problems)
    : Exception(string.Join('\n', problems.Select(problem => $"{problem.At}: {problem.Message}")))
{
    /// <summary>Everything that is wrong, in the order of the record.</summary>
    public ImmutableArray<Problem> Problems { get; } = problems;
}
