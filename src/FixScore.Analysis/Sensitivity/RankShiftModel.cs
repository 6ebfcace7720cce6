namespace FixScore.Analysis.Sensitivity;

/// <summary>Mean shift in rank as a function of uniform inputs. Immutable and thread safe, as far as the rules are.</summary>
sealed class RankShiftModel(UnitTable[] tables, double[] reference, RankShiftInputs uncertain)
{
    readonly double[][][] _tables = [.. tables.Select(table => table.Rows.Select(row => row.Select(value => (double)value.Middle()).ToArray()).ToArray())];
    readonly DrawnWeights _weights = new(uncertain.Weights);
    readonly DrawnRule _rule = new(uncertain.Rules, uncertain.TableRules);

    public double Shift(ReadOnlySpan<double> inputs)
    {
        var rest = inputs[uncertain.Weights.Length..];
        var scores = _rule.Scores(DrawnRule.Way(rest[0], _rule.Ways), _tables[Table(rest[1..])], _weights.At(inputs));
        return MeanShift.Of(scores, reference);
    }

    int Table(ReadOnlySpan<double> inputs)
    {
        var table = 0;
        for (var i = 0; i < inputs.Length; i++) table = (table * uncertain.Choices[i].Ways.Length) + DrawnRule.Way(inputs[i], uncertain.Choices[i].Ways.Length);
        return table;
    }
}
