using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace FixScore.Reading;

sealed partial class ObjectReader
{
    /// <summary>A number or a range; <c>null</c> when missing.</summary>
    public Quantity? Quantity(string name, bool negative = false, bool whole = false, bool required = false) =>
        TryGet(name, required, out var value) ? QuantityOf(value, Member(name), negative, whole) : null;

    /// <summary>A plain number.</summary>
    public decimal Number(string name) => NumberOrNull(name, true) ?? 0m;

    public decimal? NumberOrNull(string name, bool required = false) =>
        TryGet(name, required, out var value) ? NumberOf(value, Member(name), negative: true) : null;

    /// <summary>A whole number within bounds.</summary>
    public int Whole(string name, int min, int max)
    {
        if (NumberOrNull(name, true) is not { } number) return min;
        if (number == decimal.Truncate(number) && number >= min && number <= max) return (int)number;
        context.Error(Pointer.Child(name), "out-of-range", "A whole number from {min} to {max} is asked.", "Correct it.", ("min", min), ("max", max));
        return min;
    }

    public bool? FlagOrNull(string name)
    {
        if (!TryGet(name, false, out var value)) return null;
        if (value.ValueKind is JsonValueKind.True or JsonValueKind.False) return value.GetBoolean();
        ReportType(name, "true or false");
        return null;
    }

    Quantity? QuantityOf(JsonElement value, Place at, bool negative, bool whole)
    {
        if (value.ValueKind == JsonValueKind.Object) return TryNested(value, at, range => range.Range(negative, whole), out var read) ? read : null;
        if (NumberOf(value, at, negative) is not { } number) return null;
        CheckWhole(number, at, whole);
        return number;
    }

    Quantity Range(bool negative, bool whole)
    {
        var min = Raw("min") is { } low ? NumberOf(low, Member("min"), negative) : null;
        var max = Raw("max") is { } high ? NumberOf(high, Member("max"), negative) : null;
        if (found == 0) context.Error(Pointer, "empty-range", "A range needs 'min', 'max' or both.", "Leave the whole member out when nothing is known.");
        if (min > max)
            context.Error(Pointer, "range-reversed", "The range goes from {min} down to {max}.", "Swap the ends.", ("min", min.Value), ("max", max.Value));
        CheckWhole(min, Member("min"), whole);
        CheckWhole(max, Member("max"), whole);
        return new(min, max);
    }

    void CheckWhole(decimal? number, Place at, bool whole)
    {
        if (whole && number is { } value && value != decimal.Truncate(value))
            context.Error(at.Pointer, "not-whole", "{number} is not a whole number.", "Counts are whole.", ("number", value));
    }

    decimal? NumberOf(JsonElement value, Place at, bool negative)
    {
        if (value.ValueKind != JsonValueKind.Number)
        {
            ReportType(at, "a number");
            return null;
        }
        var raw = JsonMarshal.GetRawUtf8Value(value);
        if (!NumberRule.TryRead(raw, out var number, out var wrong))
        {
            context.Error(at.Pointer, "number-range", wrong, "Correct the number, or round it to what was measured.");
            return null;
        }
        if (number >= 0 || negative) return number;
        context.Error(at.Pointer, "negative", "{number} is negative.", "Only temperatures, specs and observations may be.", ("number", number));
        return null;
    }
}

/// <summary>Which numbers the formats take: at most 15 significant digits, 0 or 1e-12 to below 1e15 in size.</summary>
static class NumberRule
{
    const decimal Least = 0.000000000001m;
    const decimal Most = 1_000_000_000_000_000m;

    public static bool TryRead(ReadOnlySpan<byte> raw, out decimal number, out string wrong)
    {
        wrong = "";
        var digits = SignificantDigits(raw);
        if (!decimal.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out number) || Math.Abs(number) >= Most)
            wrong = "The number is 1e15 or more in size.";
        else if (digits > 15)
            wrong = "The number has more than 15 significant digits.";
        else if (digits > 0 && Math.Abs(number) < Least)
            wrong = "The number is smaller than 1e-12 in size and not 0.";
        number = number == 0m ? 0m : number;
        return wrong.Length == 0;
    }

    static int SignificantDigits(ReadOnlySpan<byte> raw)
    {
        var (count, zeros) = (0, 0);
        foreach (var letter in raw)
        {
            if (letter is (byte)'e' or (byte)'E') break;
            if (letter is < (byte)'0' or > (byte)'9') continue;
            if (letter == (byte)'0') zeros += count > 0 ? 1 : 0;
            else (count, zeros) = (count + zeros + 1, 0);
        }
        return count;
    }
}
