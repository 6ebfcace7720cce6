using System.Collections.Immutable;
using FixScore.Analysis.Ranking;
using FixScore.Numbers;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>Mean shift in rank from the profile as it stands, as a function of uniform inputs. Immutable and thread safe, as far as the rules are.</summary>
sealed class ProfileModel
{
    readonly ProfileChoices choices;
    readonly KernelRuns runs;
    readonly ProfileInputs inputs;
    readonly DrawnWeights weights;
    readonly DrawnRule rule;
    readonly double[][] ofReadings;
    readonly decimal[] caps;
    readonly double[] reference;

    public ProfileModel(ProfileChoices choices, KernelRuns runs, RankShiftInputs uncertain)
    {
        (this.choices, this.runs) = (choices, runs);
        inputs = new(choices);
        weights = new(uncertain.Weights);
        rule = new(uncertain.Rules, uncertain.TableRules);
        ofReadings = [.. choices.Readings.Select(reading => OfReading(choices.Lines, ProfileLines.Of(reading)!))];
        caps = [.. choices.Gates.Select(gate => ProfileLines.Share(gate.Cap, choices.Lines.Root.Scale))];
        reference = [.. Ranks.Middles(Enumerable.Range(0, runs.Records).Select(Given)).Select(rank => (double)rank)];
    }

    public double Shift(ReadOnlySpan<double> drawn)
    {
        var chosen = inputs.At(drawn);
        var all = weights.At(drawn);
        for (var line = 0; line < all.Length; line++) all[line] *= ofReadings[chosen.Reading][line];
        var scores = rule.Scores(inputs.Rule(drawn, rule.Ways), Rows(chosen), all);
        if (chosen.HasGates && rule.MakesPoints(inputs.Rule(drawn, rule.Ways))) Cap(scores, chosen);
        return MeanShift.Of(scores, reference);
    }

    double[][] Rows(Chosen chosen)
    {
        var rows = new double[runs.Records][];
        for (var record = 0; record < rows.Length; record++)
        {
            rows[record] = new double[chosen.Factors.Length];
            for (var line = 0; line < rows[record].Length; line++)
                rows[record][line] = (double?)runs.Line(record, chosen.Reading, chosen.Unknown, chosen.Factors[line], line) ?? double.NaN;
        }
        return rows;
    }

    void Cap(double[] scores, Chosen chosen)
    {
        for (var record = 0; record < scores.Length; record++)
            for (var gate = 0; gate < caps.Length; gate++)
                if (runs.IsClosed(record, chosen.Reading, chosen.Unknown, chosen.Factors, gate)) scores[record] = Math.Min(scores[record], (double)caps[gate]);
    }

    // As the kernel adds up, exactly, so that level units are level.
    decimal Given(int record)
    {
        var given = inputs.Given;
        var terms = choices.Lines.Weights.Index()
            .Select(line => (line.Item, Value: runs.Line(record, given.Reading, given.Unknown, given.Factors[line.Index], line.Index)))
            .Where(line => line.Value is not null).Select(line => (line.Item, line.Value!.Value)).ToArray();
        var score = terms.Length == 0 ? 0.5m : Means.WeightedArithmetic(terms);
        for (var gate = 0; gate < caps.Length; gate++)
            if (runs.IsClosed(record, given.Reading, given.Unknown, given.Factors, gate)) score = Math.Min(score, caps[gate]);
        return score;
    }

    // By how much a reading makes a line weigh more; 0 where there is no such line under it.
    static double[] OfReading(ProfileLines lines, ProfileLines read) =>
        [.. lines.Nodes.Select(line => read.IndexOf(line.Id) is >= 0 and var index ? (double)(read.Nodes[index].Weight!.Value / line.Weight!.Value) : 0)];
}
