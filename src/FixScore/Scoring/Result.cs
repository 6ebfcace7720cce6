using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>The totals of one evaluation.</summary>
sealed class Result
{
    readonly Profile profile;

    public Result(Profile profile, Row root)
    {
        (this.profile, Root) = (profile, root);
        Gates = new(profile, root);
        Closed = Gates.Closed();
        Total = GateKeeper.Cap(root.Value, Closed);
    }

    public Row Root { get; }

    public GateKeeper Gates { get; }

    public ImmutableArray<ScoreGate> Closed { get; }

    public Interval Total { get; }

    public Interval Shown => Show(Total);

    /// <summary>The classes of both ends; <c>null</c> when the profile has none.</summary>
    public ClassRange? Class => profile.Classes.IsEmpty ? null : new(ClassOf(Total.Low), ClassOf(Total.High));

    public Interval Show(Interval value) => value.IsExact ? Show(value.Low) : new Interval(Show(value.Low), Show(value.High));

    /// <summary>Whether both have the same class or, without classes, the same total as shown.</summary>
    public bool LooksLike(Result other) => Class is { } own ? own == other.Class : Shown == other.Shown;

    decimal Show(decimal value) => Rounding.To(value, profile.Scale.Decimals, profile.Scale.Rounding);

    string ClassOf(decimal total)
    {
        var value = profile.ClassesOn == ClassBasis.Shown ? Show(total) : total;
        foreach (var each in profile.Classes)
            if (value >= each.From) return each.Label;
        return profile.Classes[^1].Label;
    }
}
