namespace FixScore.Criteria.Disassembly;

/// <summary>Of mixed kinds the worst counts (Regulation (EU) 2023/1669 Annex IV point 5).</summary>
static class Worst
{
    /// <summary>The least of all points, end by end; <paramref name="none"/> when there are none.</summary>
    public static Interval Of(IEnumerable<Interval> points, Interval none) =>
        points.ToArray() is { Length: > 0 } all ? new(all.Min(each => each.Low), all.Min(each => each.High)) : none;
}
