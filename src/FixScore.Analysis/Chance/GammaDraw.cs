namespace FixScore.Analysis.Chance;

/// <summary>Gamma variates of scale 1: what a Dirichlet law is made of.</summary>
/// <remarks>Marsaglia and Tsang, A simple method for generating gamma variables, ACM TOMS 26, 2000; normals by Marsaglia's polar method. Stateless.</remarks>
static class GammaDraw
{
    /// <summary>One variate; 0 only where the true one is too small for a double.</summary>
    /// <param name="shape">Above 0.</param>
    /// <param name="random">Where its numbers come from, as many as it takes.</param>
    public static double Of(double shape, ref RandomStream random)
    {
        if (shape >= 1) return AtLeastOne(shape, ref random);
        var scale = Elementary.Log(random.Open()) / shape;
        return AtLeastOne(shape + 1, ref random) * Elementary.Exp(scale);
    }

    static double AtLeastOne(double shape, ref RandomStream random)
    {
        var d = shape - (1.0 / 3);
        var c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            var normal = Normal(ref random);
            var root = 1 + (c * normal);
            if (root <= 0) continue;
            var cube = root * root * root;
            if (Elementary.Log(random.Open()) < (0.5 * normal * normal) + (d * (1 - cube + Elementary.Log(cube)))) return d * cube;
        }
    }

    static double Normal(ref RandomStream random)
    {
        while (true)
        {
            var (x, y) = ((2 * random.Unit()) - 1, (2 * random.Unit()) - 1);
            var square = (x * x) + (y * y);
            if (square is > 0 and < 1) return x * Math.Sqrt(-2 * Elementary.Log(square) / square);
        }
    }
}
