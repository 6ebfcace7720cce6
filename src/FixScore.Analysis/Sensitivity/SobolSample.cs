using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Outputs, less their mean, for two independent matrices of inputs and for the first with one column out of the second each time.</summary>
sealed record SobolSample(double Mean, double[] First, double[] Second, double[][] Mixed)
{
    public static SobolSample Of(Func<ReadOnlySpan<double>, double> function, int inputs, SobolOptions options)
    {
        var random = RandomCounter.Of(options.Seed, 0);
        var sample = new SobolSample(0, new double[options.Samples], new double[options.Samples], [.. Enumerable.Range(0, inputs).Select(_ => new double[options.Samples])]);
        Shares.Run(options.Samples, options.Threads, () => new Row(function, inputs), (row, number) => row.Fill(sample, random, (int)number));
        return sample.Centred();
    }

    SobolSample Centred()
    {
        var mean = (Sums.Mean(First) + Sums.Mean(Second)) / 2;
        foreach (var outputs in (double[][])[First, Second, .. Mixed])
            for (var i = 0; i < outputs.Length; i++) outputs[i] -= mean;
        return this with { Mean = mean };
    }

    sealed class Row(Func<ReadOnlySpan<double>, double> function, int inputs)
    {
        readonly double[] _first = new double[inputs];
        readonly double[] _second = new double[inputs];

        public void Fill(SobolSample sample, RandomCounter random, int row)
        {
            var start = 2L * inputs * row;
            for (var i = 0; i < inputs; i++) (_first[i], _second[i]) = (random.Unit(start + i), random.Unit(start + inputs + i));
            sample.First[row] = Ask(_first);
            sample.Second[row] = Ask(_second);
            for (var i = 0; i < inputs; i++)
            {
                var own = _first[i];
                _first[i] = _second[i];
                sample.Mixed[i][row] = Ask(_first);
                _first[i] = own;
            }
        }

        double Ask(double[] values) => function(values) is var output && double.IsFinite(output)
            ? output
            : throw new ArgumentException("The function gave something that is not a finite number.", nameof(function));
    }
}
