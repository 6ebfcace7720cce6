using System.Globalization;

namespace FixScore.Reporting;

/// <summary>Numbers as people read them. The culture is always handed in. Thread safe.</summary>
/// <param name="culture">How numbers are written.</param>
public sealed class Shown(CultureInfo culture)
{
    /// <summary>An interval: one number when both ends look the same, else <c>57 to 63</c>.</summary>
    public string Points(Interval value) => Range(Number(value.Low), Number(value.High));

    /// <summary>Two ends with at most one decimal each.</summary>
    public string Points(Ends value) => Range(Short(value.Low), Short(value.High));

    /// <summary>A place, or the range of places it can be.</summary>
    public string Place(Placing placing) => Range(Number(placing.Best), Number(placing.Worst));

    /// <summary>A number with at most four decimals.</summary>
    public string Number(decimal value) => value.ToString("0.####", culture);

    /// <summary>A number with at most one decimal, for tables.</summary>
    public string Short(decimal value) => value.ToString("0.#", culture);

    /// <summary>A share as a percentage without decimals; only what is whole is shown as 100 %.</summary>
    public string Percent(decimal share)
    {
        var percent = decimal.Round(share * 100, MidpointRounding.AwayFromZero);
        return (percent == 100 && share < 1 ? 99 : percent).ToString("0", culture) + " %";
    }

    static string Range(string low, string high) => low == high ? low : $"{low} to {high}";
}
