namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>A convex piece of the space of up to 3 weights, by its corners: a point, a line or a polygon. Exact.</summary>
sealed class WeightCell(Fraction[][] corners)
{
    /// <summary>All weights a law without a centre allows.</summary>
    public static WeightCell Of(WeightLaw law, int criteria) => new([.. Enumerable.Range(0, criteria).Select(last => Corner(law.IsOrdered, last, criteria))]);

    /// <summary>Whether nothing is left inside, edges apart.</summary>
    public bool IsFlat(int criteria) => corners.Length < criteria || Size().Sign == 0;

    /// <summary>Length or area in the first weights; 1 for a point.</summary>
    public Fraction Size() => corners.Length switch
    {
        0 => 0,
        1 => 1,
        2 => Fraction.Abs(corners[1][0] - corners[0][0]),
        _ => Triangles().Select(triangle => triangle.Area).Sum(),
    };

    /// <summary>The centre of gravity times the size.</summary>
    public Fraction[] Moment() => corners.Length < 3
        ? [.. Mean(corners).Select(weight => weight * Size())]
        : [.. Enumerable.Range(0, corners[0].Length).Select(i => Triangles().Select(triangle => Mean(triangle.Corners)[i] * triangle.Area).Sum())];

    /// <summary>The part where a sum of weights times leads is 0 or more (Sutherland and Hodgman 1974).</summary>
    public WeightCell Where(Fraction[] leads)
    {
        var values = corners.Select(corner => corner.Zip(leads, (weight, lead) => weight * lead).Sum()).ToArray();
        var kept = new List<Fraction[]>();
        for (var i = 0; i < corners.Length; i++)
        {
            var next = (i + 1) % corners.Length;
            if (values[i].Sign >= 0) kept.Add(corners[i]);
            if (values[i].Sign * values[next].Sign < 0 && (corners.Length > 2 || i == 0)) kept.Add(Between(i, next, values[i] / (values[i] - values[next])));
        }
        return new([.. kept]);
    }

    Fraction[] Between(int from, int to, Fraction way) => [.. corners[from].Zip(corners[to], (start, end) => start + (way * (end - start)))];

    IEnumerable<(Fraction[][] Corners, Fraction Area)> Triangles() =>
        from i in Enumerable.Range(1, corners.Length - 2)
        select (new[] { corners[0], corners[i], corners[i + 1] }, Area(corners[0], corners[i], corners[i + 1]));

    static Fraction Area(Fraction[] a, Fraction[] b, Fraction[] c) =>
        Fraction.Abs(((b[0] - a[0]) * (c[1] - a[1])) - ((c[0] - a[0]) * (b[1] - a[1]))) / 2;

    static Fraction[] Mean(Fraction[][] points) => [.. Enumerable.Range(0, points[0].Length).Select(i => points.Select(point => point[i]).Sum() / points.Length)];

    // Ordered weights have the corners (1, 0, 0), (1/2, 1/2, 0), (1/3, 1/3, 1/3).
    static Fraction[] Corner(bool isOrdered, int last, int criteria) =>
        [.. Enumerable.Range(0, criteria).Select(i => isOrdered ? (i <= last ? new Fraction(1, last + 1) : 0) : i == last ? 1 : 0)];
}
