using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>What became of a lost function once the boot lock was closed again, as far as trials on the same unit show it.</summary>
public enum AfterRelock
{
    /// <summary>Nothing shows it, or the loss belongs to a trial that did not open the lock.</summary>
    NotSeen,

    /// <summary>The lock was closed again, and that trial does not list the function as lost.</summary>
    NotListed,

    /// <summary>It was seen to work.</summary>
    Works,

    /// <summary>It was still lost.</summary>
    Lost,

    /// <summary>One trial shows it at work and another lost.</summary>
    Disputed,
}

/// <summary>One lock trial and what it cost.</summary>
/// <param name="Trial">The trial: how it went, days of waiting, whether data are wiped and the warranty is said to end; what was not observed is unknown.</param>
/// <param name="Losses">The functions lost, in the order of the record.</param>
public sealed record LockCost(LockTrial Trial, ImmutableArray<LostFunction> Losses)
{
    /// <summary>Whether the trial was to open the lock.</summary>
    public bool Opens => Trial.To == LockState.Unlocked && Trial.From != LockState.Unlocked;

    /// <summary>Whether the trial was to close a lock that had been open.</summary>
    public bool Closes => Trial.To == LockState.Relocked;
}

/// <summary>A function lost, and what other trials on the same unit show of it.</summary>
/// <param name="Loss">The loss as recorded.</param>
/// <param name="AfterRelock">What became of it once the lock was closed again.</param>
/// <param name="SeenIn">Ids of the trials behind <paramref name="AfterRelock"/>.</param>
/// <param name="IsContradicted">Whether another trial shows that the loss, or when it comes back, cannot be as recorded.</param>
public sealed record LostFunction(FunctionLoss Loss, AfterRelock AfterRelock, ImmutableArray<string> SeenIn, bool IsContradicted)
{
    /// <summary>When it comes back: as recorded, or unknown (<c>default</c>) where that is contradicted.</summary>
    public OneOf<Recovery> Recovers => IsContradicted ? default : Loss.Recovers;
}
