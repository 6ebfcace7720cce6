namespace FixScore.Analysis.Chance;

/// <summary>Sums in the order given, each step rounded: no library's freedom to add lanes first.</summary>
static class Sums
{
    public static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values) sum += value;
        return sum / values.Length;
    }
}
