namespace FixScore.Analysis.Sensitivity;

/// <summary>The average shift in rank: the mean over units of the distance between two ranks; level units have the middle rank.</summary>
static class MeanShift
{
    public static double Of(double[] scores, double[] reference)
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
