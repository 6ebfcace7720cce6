using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore;

/// <summary>A profile that is not for such a device.</summary>
/// <param name="problem">What does not fit.</param>
public sealed class ProfileMismatchException(Problem problem) : Exception(problem.Message)
{
    /// <summary>What does not fit, with the place in the record.</summary>
    public Problem Problem { get; } = problem;

    /// <summary>Why a profile is not for a device; <c>null</c> when it is.</summary>
    public static ProfileMismatchException? For(Device device, Profile profile)
    {
        var at = Pointer.Root.Child("device");
        if (profile.AppliesTo is not { } applies) return null;
        if (!applies.Kinds.IsEmpty && !applies.Kinds.Contains(device.Kind))
            return new(Problem.Of(Severity.Error, at.Child("kind"), "profile-not-for-kind", "The profile {profile} is not for devices of kind '{kind}'.",
                $"It is for: {string.Join(", ", applies.Kinds)}.", ("profile", profile.Id), ("kind", device.Kind)));
        if (applies.Foldable is { } foldable && foldable != device.Foldable)
            return new(Problem.Of(Severity.Error, at, "profile-not-for-foldable", "The profile {profile} is for {which} devices.",
                "Choose another profile, or correct 'foldable'.", ("profile", profile.Id), ("which", foldable ? "foldable" : "not foldable")));
        return null;
    }
}

/// <summary>Criteria that failed in a strict run: there is no score.</summary>
/// <param name="faults">All that failed.</param>
public sealed class CriterionFaultException(ImmutableArray<ScoreFault> faults)
    : Exception(string.Join(Environment.NewLine, faults.Select(fault => $"{fault.Criterion} ({fault.Plugin}) at {fault.Node}: {fault.Code}")))
{
    /// <summary>All that failed, in the order of the nodes.</summary>
    public ImmutableArray<ScoreFault> Faults { get; } = faults;
}
