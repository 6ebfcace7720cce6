namespace FixScore.Testing;

/// <summary>Deleting what a criterion reads leaves at least as much open as before.</summary>
static class WideningLaws
{
    // What the last digits of decimal arithmetic may differ by, as a share of the scale.
    const decimal Rounding = 1e-18m;

    public static void Check(Bench bench)
    {
        if (bench.Criterion.Info.Reads.IsDefault) return;
        foreach (var sample in bench.Samples)
        {
            var before = bench.Judge(sample, bench.Scale).ToDictionary(each => each.Part, each => each.Outcome!, StringComparer.Ordinal);
            foreach (var path in bench.Criterion.Info.Reads)
                foreach (var deletion in RecordMembers.Read(path)?.Deletions(sample.Record) ?? [])
                    Compare(bench, before, new Sample($"{sample.Name} without {deletion.What}", deletion.Record));
        }
    }

    static void Compare(Bench bench, Dictionary<string, Outcome> before, Sample sample)
    {
        foreach (var after in bench.Judge(sample, bench.Scale))
            if (before.TryGetValue(after.Part, out var outcome)) Compare(bench, sample, after.Part, outcome, after.Outcome!);
    }

    static void Compare(Bench bench, Sample sample, string part, Outcome before, Outcome after)
    {
        if (Judgement.PointsOf(before, bench.Scale) is not { } known) return;
        if (Judgement.PointsOf(after, bench.Scale) is not { } left)
            bench.Report(ConformanceCodes.Narrows, sample.Name, "Knowing less makes the question not arise for {part}.", ("part", Bench.Of(part)));
        else if (!Slack(left, bench.Scale).Contains(known))
            bench.Report(ConformanceCodes.Narrows, sample.Name, "Knowing less turns {before} into {after} for {part}.",
                ("before", known), ("after", left), ("part", Bench.Of(part)));
    }

    static Interval Slack(Interval interval, Scale scale)
    {
        var slack = Rounding * (scale.Max - scale.Min);
        return new(interval.Low - slack, interval.High + slack);
    }
}
