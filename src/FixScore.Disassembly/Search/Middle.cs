using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>Seconds as whole numbers, exact: twice the middle of the range, in the smallest unit a record can state.</summary>
static class Middle
{
    const decimal Unit = 1_000_000_000_000m;

    /// <summary>The weight of an operation that has a time.</summary>
    public static Int128 Of(Work work) => OperationTime.Of(work.Operation) is { } time
        ? (Int128)((time.Low + time.High) * Unit)
        : throw new InvalidOperationException("The operation has no time.");

    /// <summary>Seconds from weights.</summary>
    public static decimal Seconds(Int128 weight) => (decimal)(weight / 2) / Unit + (weight % 2 == 0 ? 0m : 0.5m / Unit);
}
