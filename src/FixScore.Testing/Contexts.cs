using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Contexts to call a criterion with, as the kernel would make them.</summary>
/// <remarks>
/// A scale left out is 0 to 100. Options not named keep their defaults; bands and levels hold points of the scale, not
/// shares. Thread safe.
/// </remarks>
public static class Contexts
{
    /// <summary>The scale used where none is stated: 0 to 100.</summary>
    public static Scale Percent { get; } = new(0, 100);

    /// <summary>What a device criterion is handed.</summary>
    /// <param name="criterion">The criterion that will be called.</param>
    /// <param name="source">The case.</param>
    /// <param name="scale">The scale to answer on.</param>
    /// <param name="options">Options and their values.</param>
    /// <exception cref="ArgumentException">The criterion does not declare an option.</exception>
    public static DeviceContext For(
        IDeviceCriterion criterion, TeardownCase source, Scale? scale = null, params ReadOnlySpan<(Option Option, object Value)> options) =>
        new(source, scale ?? Percent, Values(criterion, scale ?? Percent, options));

    /// <summary>What a part criterion is handed, with all roles of the record in its order.</summary>
    /// <param name="criterion">The criterion that will be called.</param>
    /// <param name="source">The case.</param>
    /// <param name="part">Id of the part to judge.</param>
    /// <param name="scale">The scale to answer on.</param>
    /// <param name="options">Options and their values.</param>
    /// <exception cref="ArgumentException">The record has no such part, or the criterion does not declare an option.</exception>
    public static PartContext For(
        IPartCriterion criterion, TeardownCase source, string part, Scale? scale = null, params ReadOnlySpan<(Option Option, object Value)> options) =>
        For(criterion, source, part, RolesOf(source.Record), scale, options);

    /// <summary>What a part criterion is handed, with stated roles.</summary>
    /// <param name="criterion">The criterion that will be called.</param>
    /// <param name="source">The case.</param>
    /// <param name="part">Id of the part to judge.</param>
    /// <param name="roles">The roles it is judged among, in the order a profile would list them.</param>
    /// <param name="scale">The scale to answer on.</param>
    /// <param name="options">Options and their values.</param>
    /// <exception cref="ArgumentException">The record has no such part, or the criterion does not declare an option.</exception>
    public static PartContext For(
        IPartCriterion criterion, TeardownCase source, string part, ImmutableArray<string> roles, Scale? scale = null,
        params ReadOnlySpan<(Option Option, object Value)> options) =>
        new(source, scale ?? Percent, Values(criterion, scale ?? Percent, options), Find(source.Record, part), roles);

    internal static ImmutableArray<string> RolesOf(TeardownRecord record) =>
        [.. record.Parts.Select(part => part.Role).Distinct(StringComparer.Ordinal)];

    static Part Find(TeardownRecord record, string id) =>
        record.Parts.FirstOrDefault(part => part.Id == id) ?? throw new ArgumentException($"The record has no part '{id}'.", nameof(id));

    static OptionValues Values(ICriterion criterion, Scale scale, ReadOnlySpan<(Option Option, object Value)> options)
    {
        var values = OptionValues.DefaultsOf(criterion.Info, scale);
        foreach (var (option, value) in options) values = values.With(option, value);
        return values;
    }
}
