using System.Collections.Immutable;

namespace FixScore;

/// <summary>How the limits of bands are read.</summary>
public enum BandForm
{
    /// <summary>The first limit that the value does not exceed decides; beyond the last there is no level.</summary>
    AtMost,

    /// <summary>The first limit that the value reaches decides; below the last there is no level.</summary>
    AtLeast,

    /// <summary>Straight lines between the limits; beyond the ends the end value holds.</summary>
    At,
}

/// <summary>One band.</summary>
/// <param name="Limit">The limit, in the unit of what is measured.</param>
/// <param name="Points">Points; in a default, a share of the scale from 0 to 1.</param>
public readonly record struct Band(decimal Limit, decimal Points);

/// <summary>A number becomes points: steps, or straight lines between points. A range gives the hull of all it can reach.</summary>
/// <remarks>Immutable and thread safe. Arithmetic is in decimal.</remarks>
public sealed record Bands
{
    Bands(BandForm form, ImmutableArray<Band> entries)
    {
        Form = form;
        Entries = form == BandForm.AtLeast ? [.. entries.OrderByDescending(b => b.Limit)] : [.. entries.OrderBy(b => b.Limit)];
        if (entries.IsEmpty || entries.Select(b => b.Limit).Distinct().Count() < entries.Length)
            throw new ArgumentException("Bands need at least one limit, and no limit twice.", nameof(entries));
    }

    /// <summary>How the limits are read.</summary>
    public BandForm Form { get; }

    /// <summary>The bands in the order in which they are tried: rising limits, falling for <see cref="BandForm.AtLeast"/>.</summary>
    public ImmutableArray<Band> Entries { get; }

    /// <summary>Bands of a form, in any order.</summary>
    /// <exception cref="ArgumentException">No band, or two with the same limit.</exception>
    public static Bands Of(BandForm form, params ImmutableArray<Band> entries) => new(form, entries);

    /// <summary>Steps: a value up to a limit has its points.</summary>
    public static Bands AtMost(params ReadOnlySpan<(decimal Limit, decimal Share)> steps) => new(BandForm.AtMost, From(steps));

    /// <summary>Steps: a value from a limit on has its points.</summary>
    public static Bands AtLeast(params ReadOnlySpan<(decimal Limit, decimal Share)> steps) => new(BandForm.AtLeast, From(steps));

    /// <summary>Straight lines between points.</summary>
    public static Bands Linear(params ReadOnlySpan<(decimal At, decimal Share)> points) => new(BandForm.At, From(points));

    /// <summary>The same with shares turned into points of a scale.</summary>
    public Bands On(Scale scale) => new(Form, [.. Entries.Select(band => band with { Points = scale.At(band.Points) })]);

    /// <summary>Points for a value, as the hull over the range it can have.</summary>
    /// <param name="value">The value, in the unit of the limits.</param>
    /// <param name="noLevel">Points of a value beyond the last step.</param>
    public Interval Of(Interval value, Interval noLevel) =>
        Form == BandForm.At ? Line(value) : Step(value, noLevel);

    Interval Step(Interval value, Interval noLevel)
    {
        Interval? hull = null;
        var (best, worst) = Form == BandForm.AtMost ? (value.Low, value.High) : (-value.High, -value.Low);
        foreach (var band in Entries)
        {
            var limit = Form == BandForm.AtMost ? band.Limit : -band.Limit;
            if (limit < best) continue;
            hull = hull?.Hull(band.Points) ?? band.Points;
            if (limit >= worst) return hull.Value;
        }
        return hull?.Hull(noLevel) ?? noLevel;
    }

    Interval Line(Interval value)
    {
        var hull = new Interval(Math.Min(At(value.Low), At(value.High)), Math.Max(At(value.Low), At(value.High)));
        foreach (var band in Entries)
            if (value.Contains(band.Limit)) hull = hull.Hull(band.Points);
        return hull;
    }

    decimal At(decimal value)
    {
        if (value <= Entries[0].Limit) return Entries[0].Points;
        for (var i = 1; i < Entries.Length; i++)
        {
            var (from, to) = (Entries[i - 1], Entries[i]);
            if (value <= to.Limit) return from.Points + (value - from.Limit) * (to.Points - from.Points) / (to.Limit - from.Limit);
        }
        return Entries[^1].Points;
    }

    static ImmutableArray<Band> From(ReadOnlySpan<(decimal Limit, decimal Points)> entries)
    {
        var bands = ImmutableArray.CreateBuilder<Band>(entries.Length);
        foreach (var (limit, points) in entries) bands.Add(new(limit, points));
        return bands.MoveToImmutable();
    }
}
