using System.Collections.Immutable;

namespace FixScore.Analysis.Normalising;

/// <summary>One way to make the values of a criterion comparable with those of others.</summary>
/// <remarks>
/// <para>OECD and JRC, Handbook on Constructing Composite Indicators (2008), step 5. Afterwards more is better, except with
/// <see cref="None"/>. Results are rounded half-even to 24 significant digits. Immutable and thread safe.</para>
/// <para>An open value gives the ends of what the result can be, the other units included. Logarithms are the caller's:
/// hand over the logarithms of values and of goalposts.</para>
/// </remarks>
public abstract class Normalisation
{
    private protected Normalisation() { }

    /// <summary>Values as they are, rounded.</summary>
    public static Normalisation None { get; } = new Unchanged();

    /// <summary>0 at <paramref name="worst"/>, 1 at <paramref name="best"/>, linear between, clipped outside. Goalposts make a value independent of other units.</summary>
    /// <param name="worst">The value that counts 0; above <paramref name="best"/> where less is better.</param>
    /// <param name="best">The value that counts 1.</param>
    /// <exception cref="ArgumentException">Both are equal.</exception>
    public static Normalisation Goalposts(decimal worst, decimal best) => worst == best
        ? throw new ArgumentException("Goalposts must differ.", nameof(best))
        : new Goalposts(worst, best);

    /// <summary>0 for the worst of the units, 1 for the best, linear between. A constant column, which tells no unit from another, gives 1/2 (own rule, no source).</summary>
    /// <param name="direction">Whether more or less is better.</param>
    public static Normalisation OwnExtremes(Direction direction) => new OwnExtremes(direction);

    /// <summary>Distance from the mean in standard deviations of a sample (with n - 1). A constant column gives 0. An open value is a problem.</summary>
    /// <param name="direction">Whether more or less is better.</param>
    public static Normalisation ZScore(Direction direction) => new ZScore(direction);

    /// <summary>Share of the best unit's value: value / best, or best / value where less is better. Values must be above 0.</summary>
    /// <remarks>Depends on where the scale has its zero: the Handbook's Table 14 shows an order that turns with the unit of temperature.</remarks>
    /// <param name="direction">Whether more or less is better.</param>
    public static Normalisation ToLeader(Direction direction) => new ToLeader(direction);

    /// <summary>Value / reference, such as the mean of the units or a target.</summary>
    /// <param name="reference">The value that counts 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0.</exception>
    public static Normalisation ToReference(decimal reference) => new ToReference(reference);

    /// <summary>How many units it leaves behind, with one half for each that is level: 0 for the last, n - 1 for the first.</summary>
    /// <param name="direction">Whether more or less is better.</param>
    public static Normalisation Ranks(Direction direction) => new UnitsBehind(direction);

    /// <summary>What stands in the way of a column: code and template; <c>null</c> when nothing does.</summary>
    internal virtual (string Code, string Template, string Hint)? Obstacle(ImmutableArray<Interval> column) => null;

    internal abstract ImmutableArray<Interval> Of(ImmutableArray<Interval> column);
}
