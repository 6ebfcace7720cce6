using CsCheck;

namespace FixScore.Exact.Tests.Numbers;

/// <summary>Generators of decimals that are spread over all sizes, with edges more often than chance would have them.</summary>
internal static class AnyDecimal
{
    /// <summary>All that a decimal can hold, both signs, zero and trailing zeros included.</summary>
    internal static readonly Gen<decimal> Any =
        Gen.Select(Gen.Int, Gen.Int, Gen.Int, Gen.Bool, Gen.Byte[0, 28]).Select((low, middle, high, negative, scale) =>
            new decimal(low, middle, high, negative, scale));

    /// <summary>Such as people write: up to 6 digits, up to 3 of them after the point.</summary>
    internal static readonly Gen<decimal> Small =
        Gen.Select(Gen.Int[-999_999, 999_999], Gen.Byte[0, 3]).Select((units, scale) => units * new decimal(1, 0, 0, false, scale));

    /// <summary>Above zero, up to 24 significant digits, 1e-12 to 1e12.</summary>
    internal static readonly Gen<decimal> Value =
        Gen.Select(Gen.Long[1, 999_999_999_999], Gen.Long[0, 999_999_999_999], Gen.Bool).Select((whole, part, isLarge) =>
            (isLarge ? whole : whole % 10) + (part * 1e-12m) + 1e-12m);

    /// <summary>A weight of up to 15 significant digits, 1e-12 to 1e15.</summary>
    internal static readonly Gen<decimal> Weight =
        Gen.Select(Gen.Long[1, 999_999_999_999_999], Gen.Byte[0, 12]).Select((units, scale) =>
            units * new decimal(1, 0, 0, false, scale));

    /// <summary>One to six terms of a mean; often with equal values.</summary>
    internal static readonly Gen<(decimal Weight, decimal Value)[]> Terms =
        Gen.Select(Weight, Gen.OneOf(Value, Gen.OneOf(1m, 2m, 2.5m, 5m))).Array[1, 6];
}
