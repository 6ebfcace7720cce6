using System.Globalization;

namespace FixScore.Numbers;

/// <summary>Decimals as text that is the same everywhere.</summary>
internal static class PlainText
{
    /// <summary>Plain notation with a point: no exponent, no trailing zeros, no -0, no grouping, no culture.</summary>
    internal static string Of(decimal value) => Decimals.Trim(value).ToString(CultureInfo.InvariantCulture);
}
