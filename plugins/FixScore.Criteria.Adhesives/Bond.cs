using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>An adhesive or tape that holds a part, and what it takes to open it.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Undoing">The operations that undo it, in the order of the record.</param>
/// <param name="Effort">What it takes to open it by these.</param>
/// <param name="HoldsCell">Whether it holds a lithium cell.</param>
sealed record Bond(Joint Joint, ImmutableArray<Operation> Undoing, Effort Effort, bool HoldsCell)
{
    /// <summary>Stands for "no limit", far above any force in newtons or temperature in degrees Celsius.</summary>
    public const decimal Unlimited = 1_000_000_000_000;

    const decimal PeelStripMm = 25;

    /// <summary>How it is loaded when it is opened, as far as its type tells: what bends is peeled, what is rigid is sheared (common practice, no source).</summary>
    public ImmutableArray<Loading> Loading => Joint.Kind == JointKind.Tape && Joint.Adhesive is null
        ? [Adhesives.Loading.Peel]
        : [.. (Joint.Adhesive?.Type ?? default).Possible().Select(Of).Distinct().Order()];

    /// <summary>Newtons to peel it: strength (N/25 mm, steady 180-degree peel, ISO 29862, ASTM D3330) times width / 25; <c>null</c> when not measured.</summary>
    public Interval? PeelN => Product(Joint.Adhesive?.PeelNPer25Mm, Joint.Adhesive?.WidthMm) is { } product
        ? new(product.Low / PeelStripMm, product.High / PeelStripMm)
        : null;

    /// <summary>Newtons to shear it: lap shear strength (MPa) times area (mm2); <c>null</c> when not measured.</summary>
    public Interval? ShearN => Product(Joint.Adhesive?.ShearMPa, Joint.Adhesive?.AreaMm2);

    static Loading Of(AdhesiveType type) => type is AdhesiveType.PressureSensitive or AdhesiveType.StretchRelease or AdhesiveType.Foam
        ? Adhesives.Loading.Peel
        : Adhesives.Loading.Shear;

    static Interval? Product(Quantity? strength, Quantity? size)
    {
        if (strength is null) return null;
        var (a, b) = (NotNegative(strength.Value), NotNegative(size ?? default));
        return new(a.Low * b.Low, a.High * b.High);
    }

    static Interval NotNegative(Quantity quantity)
    {
        var range = quantity.Within(0, Unlimited);
        return new(Math.Min(range.Low, Unlimited), Math.Min(range.High, Unlimited));
    }
}

/// <summary>How a bond is loaded when it is opened.</summary>
enum Loading
{
    Peel,
    Shear,
}
