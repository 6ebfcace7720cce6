using System.Collections;
using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>What a check of a criterion found. Empty when it keeps every law that was tried. Immutable.</summary>
public sealed class ConformanceReport : IReadOnlyList<ConformanceFinding>
{
    readonly ImmutableArray<ConformanceFinding> findings;

    internal ConformanceReport(string criterion, ImmutableArray<ConformanceFinding> findings) =>
        (Criterion, this.findings) = (criterion, findings);

    /// <summary>Id of the criterion; empty when it does not even tell its id.</summary>
    public string Criterion { get; }

    /// <inheritdoc/>
    public int Count => findings.Length;

    /// <inheritdoc/>
    public ConformanceFinding this[int index] => findings[index];

    /// <summary>Fails a test.</summary>
    /// <exception cref="ConformanceException">There are findings; it names all of them.</exception>
    public void ThrowIfAny()
    {
        if (Count > 0) throw new ConformanceException(this);
    }

    /// <inheritdoc/>
    public IEnumerator<ConformanceFinding> GetEnumerator() => ((IEnumerable<ConformanceFinding>)findings).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>A criterion breaks laws.</summary>
/// <param name="report">What was found.</param>
public sealed class ConformanceException(ConformanceReport report)
    : Exception($"The criterion '{report.Criterion}' breaks laws:\n{string.Join('\n', report)}")
{
    /// <summary>What was found.</summary>
    public ConformanceReport Report { get; } = report;
}
