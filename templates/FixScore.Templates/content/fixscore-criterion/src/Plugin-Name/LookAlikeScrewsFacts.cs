using System.Collections.Immutable;
using FixScore;
using FixScore.Records;

namespace PluginNamespace;

/// <summary>The screws of a device, and those that look like another.</summary>
/// <param name="Screws">All screw entries, in the order of the record.</param>
/// <param name="Mistakable">Those that surely look like another.</param>
/// <param name="Open">Those of which the record leaves it open.</param>
sealed record LookAlikeScrewsFacts(ImmutableArray<Joint> Screws, ImmutableArray<Joint> Mistakable, ImmutableArray<Joint> Open)
{
    /// <summary>Everything that the share of mistakable ones can be. Needs a screw.</summary>
    public Interval Share => new((decimal)Mistakable.Length / Screws.Length, (decimal)(Mistakable.Length + Open.Length) / Screws.Length);

    public static LookAlikeScrewsFacts Of(IEnumerable<Joint> joints, decimal toldApart)
    {
        ImmutableArray<Joint> screws = [.. joints.Where(joint => joint.Kind == JointKind.Screw)];
        var answers = screws.ToLookup(screw => IsMistakable(screw, screws, toldApart));
        return new(screws, [.. answers[true]], [.. answers[null]]);
    }

    // Here and below null says that the record leaves it open; & and ! reckon with that.
    static bool? IsMistakable(Joint screw, ImmutableArray<Joint> screws, decimal toldApart)
    {
        bool?[] answers = [.. screws.Where(other => other.Id != screw.Id).Select(other => LookAlike(screw.Screw, other.Screw, toldApart))];
        return answers.Contains(true) ? true : answers.Contains(null) ? null : false;
    }

    static bool? LookAlike(Screw? one, Screw? other, decimal toldApart)
    {
        if (one is null || other is null) return null;
        var (wider, longer) = (Difference(one.DiameterMm, other.DiameterMm), Difference(one.LengthMm, other.LengthMm));
        var isSameSize = IsAtMost(wider, 0) & IsAtMost(longer, 0);
        return IsSame(one.Drive, other.Drive) & !isSameSize & IsAtMost(wider, toldApart) & IsAtMost(longer, toldApart);
    }

    static bool? IsSame(OneOf<string> one, OneOf<string> other)
    {
        if (one.IsExact && other.IsExact) return one == other;
        return one.IsUnknown || one.Stated.Any(other.MayBe) ? null : false;
    }

    static Interval Difference(Quantity one, Quantity other)
    {
        var (a, b) = (one.Within(0, decimal.MaxValue), other.Within(0, decimal.MaxValue));
        return new(Math.Max(0, Math.Max(a.Low - b.High, b.Low - a.High)), Math.Max(a.High - b.Low, b.High - a.Low));
    }

    static bool? IsAtMost(Interval value, decimal limit) => value.High <= limit ? true : value.Low > limit ? false : null;
}
