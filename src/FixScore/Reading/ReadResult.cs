using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace FixScore;

/// <summary>What reading gave: a value, or every problem that stands in the way. Warnings come with a value.</summary>
/// <typeparam name="T">What was read.</typeparam>
public sealed class ReadResult<T> where T : class
{
    internal ReadResult(T? value, ImmutableArray<LocatedProblem> problems) => (Value, Problems) = (value, problems);

    /// <summary>The value; <c>null</c> when a problem is an error.</summary>
    public T? Value { get; }

    /// <summary>All problems, in the order of their places.</summary>
    public ImmutableArray<LocatedProblem> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsValid => Value is not null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidDocumentException">There is none; carries all problems.</exception>
    public T OrThrow() => Value ?? throw new InvalidDocumentException(Problems);
}

/// <summary>A record or profile that cannot be used, with everything that is wrong with it.</summary>
/// <param name="problems">The problems.</param>
public sealed class InvalidDocumentException(ImmutableArray<LocatedProblem> problems)
    : Exception(string.Join(Environment.NewLine, problems.Select(p => $"{p.Line}:{p.Column} {p.Problem.Code} {p.Problem.Message} ({p.Problem.At})")))
{
    /// <summary>All problems, in the order of their places.</summary>
    public ImmutableArray<LocatedProblem> Problems { get; } = problems;
}
