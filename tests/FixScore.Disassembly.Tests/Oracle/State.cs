namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>How far a device is taken apart; sets are bit masks by place in the record.</summary>
/// <param name="Done">Operations done.</param>
/// <param name="Last">The operation just before, -1 at the start.</param>
/// <param name="Removed">Parts removed by name, their own or that of another part of their group.</param>
/// <param name="Gone">Parts that left, by name or riding along.</param>
/// <param name="Away">Parts that left or were moved, riders included.</param>
/// <param name="Undone">Joints undone, or parted by themselves.</param>
readonly record struct State(int Done, int Last, int Removed, int Gone, int Away, int Undone)
{
    public static State Start { get; } = new(0, -1, 0, 0, 0, 0);
}
