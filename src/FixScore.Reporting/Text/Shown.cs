using System.Globalization;
using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>Numbers and places as people read them. The culture is always handed in.</summary>
/// <param name="culture">How numbers are written.</param>
public sealed class Shown(CultureInfo culture)
{
    /// <summary>An interval: one number when both ends look the same, else <c>57 to 63</c>.</summary>
    public string Points(Interval value) => value.Low == value.High ? Number(value.Low) : $"{Number(value.Low)} to {Number(value.High)}";

    /// <summary>A number with at most four decimals.</summary>
    public string Number(decimal value) => value.ToString("0.####", culture);

    /// <summary>A number with at most one decimal, for tables.</summary>
    public string Short(decimal value) => value.ToString("0.#", culture);

    /// <summary>A share as a percentage without decimals.</summary>
    public string Percent(decimal share) => decimal.Round(share * 100, MidpointRounding.AwayFromZero).ToString("0", culture) + " %";

    /// <summary>Where in a record something stands: pointers, and the footage that shows the operations among them.</summary>
    public static string Evidence(TeardownRecord record, IEnumerable<Pointer> pointers)
    {
        var all = pointers.ToArray();
        return string.Join("; ", all.Select(pointer => pointer.Text).Concat(all.SelectMany(pointer => Footage(record, pointer))));
    }

    static IEnumerable<string> Footage(TeardownRecord record, Pointer pointer)
    {
        if (pointer.Text.Split('/') is not ["", "operations", var index] || !int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at)) return [];
        if (at >= record.Operations.Count) return [];
        return record.Operations[at].Footage.Select(piece => $"{SourceOf(record, piece)} {Time(piece.From)} to {Time(piece.To)}, {piece.Unit}");
    }

    static string SourceOf(TeardownRecord record, Footage piece) =>
        record.Evidence.FirstOrDefault(item => item.Id == piece.Source)?.Ref ?? piece.Source;

    static string Time(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}");
}
