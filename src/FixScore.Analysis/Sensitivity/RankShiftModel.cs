namespace FixScore.Analysis.Sensitivity;

/// <summary>Mean shift in rank as a function of uniform inputs. Immutable and thread safe, as far as the rules are.</summary>
sealed class RankShiftModel(UnitTable[] tables, double[] reference, RankShiftInputs uncertain)
{
    readonly double[][][] _tables = [.. tables.Select(table => table.Rows.Select(row => row.Select(value => (double)value.Middle()).ToArray()).ToArray())];
    readonly (double Low, double Width)[] _weights = [.. uncertain.Weights.Select(weight => ((double)weight.Low, (double)(weight.High - weight.Low)))];

    public double Shift(ReadOnlySpan<double> inputs)
    {
        var weights = new double[_weights.Length];
        for (var i = 0; i < weights.Length; i++) weights[i] = _weights[i].Low + (_weights[i].Width * inputs[i]);
        var rule = uncertain.Rules[Way(inputs[weights.Length], uncertain.Rules.Length)];
        return Shift(Scores(_tables[Table(inputs[(weights.Length + 1)..])], weights, rule));
    }

    int Table(ReadOnlySpan<double> inputs)
    {
        var table = 0;
        for (var i = 0; i < inputs.Length; i++) table = (table * uncertain.Choices[i].Ways.Length) + Way(inputs[i], uncertain.Choices[i].Ways.Length);
        return table;
    }

    static int Way(double input, int ways) => Math.Min((int)(input * ways), ways - 1);

    static double[] Scores(double[][] rows, double[] weights, ScoreRule rule)
    {
        var scores = new double[rows.Length];
        for (var unit = 0; unit < rows.Length; unit++) scores[unit] = Ordered(rule(rows[unit], weights));
        return scores;
    }

    static double Ordered(double score) => double.IsNaN(score) ? throw new ArgumentException("A rule gave something that is not a number.") : score;

    double Shift(double[] scores)
    {
        var sum = 0.0;
        for (var unit = 0; unit < scores.Length; unit++) sum += Math.Abs(reference[unit] - Rank(scores, scores[unit]));
        return sum / scores.Length;
    }

    static double Rank(double[] scores, double own)
    {
        var (above, level) = (0, 0);
        foreach (var score in scores)
            if (score > own) above++;
            else if (score == own) level++;
        return above + ((level + 1) / 2.0);
    }
}
