using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>How long an operation takes, from what was stated or filmed. Thread safe.</summary>
public static class OperationTime
{
    /// <summary>
    /// Seconds as stated, else from footage: pieces of one unit add up, several units give a range. <c>null</c> when
    /// there is neither, or when what was stated is open at one end.
    /// </summary>
    public static Interval? Of(Operation operation) =>
        operation.Seconds is { } stated ? Known(stated) : Filmed(operation);

    /// <summary>A quantity with both ends; <c>null</c> otherwise.</summary>
    public static Interval? Known(Quantity? quantity) =>
        quantity is { Min: { } min, Max: { } max } ? new Interval(min, max) : null;

    static Interval? Filmed(Operation operation) =>
        Interval.HullOf(operation.Footage.GroupBy(piece => piece.Unit, StringComparer.Ordinal)
            .Select(unit => (Interval)unit.Sum(piece => (decimal)(piece.To - piece.From).Ticks / TimeSpan.TicksPerSecond)));
}
