using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore;

/// <summary>Everything a criterion is handed: the case, the scale to answer on, the options of the profile.</summary>
/// <remarks>Members may be added; none will be taken away within a major version.</remarks>
public abstract class CriterionContext
{
    readonly OptionValues options;

    private protected CriterionContext(TeardownCase source, Scale scale, OptionValues options, CancellationToken cancellation) =>
        (Case, Scale, this.options, Cancellation) = (source, scale, options, cancellation);

    /// <summary>The record and what is derived from it.</summary>
    public TeardownCase Case { get; }

    /// <summary>The scale to answer on.</summary>
    public Scale Scale { get; }

    /// <summary>Cancels the whole run.</summary>
    public CancellationToken Cancellation { get; }

    /// <summary>The value of an option: the profile's, else the default.</summary>
    /// <exception cref="ArgumentException">The criterion did not declare the option.</exception>
    public T Get<T>(Option<T> option) where T : notnull => options.Get(option);

    /// <summary>Points for a measured value. What has no level follows <see cref="Options.NoLevel"/> where the criterion declares it, else it is the whole scale.</summary>
    /// <exception cref="ArgumentException">The criterion did not declare the option.</exception>
    public Interval Points(Option<Bands> bands, Interval value) => Get(bands).Of(value, NoLevel);

    /// <summary>Points for an observed word, as a hull over the words it can be. What has no level is treated as for bands.</summary>
    /// <exception cref="ArgumentException">The criterion did not declare the option, or no word is possible.</exception>
    public Interval Points(Option<Levels> levels, params IEnumerable<string> possible) => Get(levels).Of(possible, NoLevel);

    private protected OptionValues Values => options;

    Interval NoLevel => options.Find(Options.NoLevel) is WhenNoLevel.Lowest ? Scale.Min : Scale.Whole;
}

/// <summary>What a device criterion is handed.</summary>
/// <param name="source">The case.</param>
/// <param name="scale">The scale to answer on.</param>
/// <param name="options">Values of the criterion's options.</param>
/// <param name="cancellation">Cancels the whole run.</param>
public sealed class DeviceContext(TeardownCase source, Scale scale, OptionValues options, CancellationToken cancellation = default)
    : CriterionContext(source, scale, options, cancellation)
{
    /// <summary>For advice of a part criterion: the roles it is judged among; empty for all. A judgement of the device has none.</summary>
    public ImmutableArray<string> Roles { get; init; } = [];

    /// <summary>The parts with one of <see cref="Roles"/>, in the order of the record.</summary>
    public IEnumerable<Part> JudgedParts => Case.Record.Parts.Where(part => Roles.IsEmpty || Roles.Contains(part.Role));

    /// <summary>For advice of a part criterion: what it is handed to judge a part of the record, with the same scale and options.</summary>
    public PartContext For(Part part) => new(Case, Scale, Values, part, Roles.IsEmpty ? [.. Case.Record.Parts.Select(each => each.Role).Distinct(StringComparer.Ordinal)] : Roles, Cancellation);
}

/// <summary>What a part criterion is handed.</summary>
/// <param name="source">The case.</param>
/// <param name="scale">The scale to answer on.</param>
/// <param name="options">Values of the criterion's options.</param>
/// <param name="part">The part to judge.</param>
/// <param name="roles">The roles it is judged among.</param>
/// <param name="cancellation">Cancels the whole run.</param>
public sealed class PartContext(
    TeardownCase source, Scale scale, OptionValues options, Part part, ImmutableArray<string> roles, CancellationToken cancellation = default)
    : CriterionContext(source, scale, options, cancellation)
{
    /// <summary>The part to judge.</summary>
    public Part Part { get; } = part;

    /// <summary>The roles it is judged among, in the order of the profile: "the previous priority part" needs no second list.</summary>
    public ImmutableArray<string> Roles { get; } = roles;
}
