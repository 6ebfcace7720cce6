using System.Collections.Immutable;

namespace FixScore;

/// <summary>Asks a set of requirements about a record. Thread safe.</summary>
public static class RequirementCheck
{
    // No requirement has points; options that hold some are read on this scale.
    static readonly Scale Points = new(0, 100);

    /// <summary>The findings of a set, in its order, with its options at their defaults.</summary>
    /// <param name="set">The set.</param>
    /// <param name="source">The case.</param>
    /// <param name="date">The day for which the law is asked.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="RequirementFaultException">The set threw.</exception>
    public static ImmutableArray<Finding> Check(
        this Installed<IRequirementSet> set, TeardownCase source, DateOnly date, CancellationToken cancellation = default)
    {
        try
        {
            return [.. set.Item.Check(new(source, date, DefaultsOf(set.Item.Info), cancellation))];
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            throw new RequirementFaultException(set.Item.Info.Id, set.Plugin.Id, failure);
        }
    }

    static OptionValues DefaultsOf(RequirementInfo info) => OptionValues.DefaultsOf(
        new CriterionInfo(info.Id, info.RuleVersion, info.Title, "requirements", "", Direction.MoreIsBetter, info.Source, [], info.Options), Points);
}

/// <summary>A set of requirements that threw: a bug of its plugin.</summary>
/// <param name="set">Id of the set.</param>
/// <param name="plugin">Id of the plugin.</param>
/// <param name="inner">What it threw.</param>
public sealed class RequirementFaultException(string set, string plugin, Exception inner)
    : Exception($"The requirement set {set} of {plugin} failed ({inner.GetType().Name}).", inner)
{
    /// <summary>Id of the set.</summary>
    public string Set { get; } = set;

    /// <summary>Id of the plugin.</summary>
    public string Plugin { get; } = plugin;
}
