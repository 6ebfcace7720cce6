namespace FixScore.Testing;

/// <summary>The better of two records gets at least as much, at both ends.</summary>
static class MonotoneLaws
{
    public static void Check(Bench bench)
    {
        foreach (var pair in bench.Options.Pairs)
        {
            var worse = bench.Judge(new Sample($"{pair.Name}: worse", pair.Worse), bench.Scale);
            var better = bench.Judge(new Sample($"{pair.Name}: better", pair.Better), bench.Scale)
                .ToDictionary(each => each.Part, each => each.Outcome!, StringComparer.Ordinal);
            foreach (var each in worse)
                if (better.TryGetValue(each.Part, out var outcome)) Compare(bench, pair, each.Part, each.Outcome!, outcome);
        }
    }

    static void Compare(Bench bench, MonotonePair pair, string part, Outcome worse, Outcome better)
    {
        if (Judgement.PointsOf(worse, bench.Scale) is not { } least) return;
        if (Judgement.PointsOf(better, bench.Scale) is not { } most) return;
        if (most.Low < least.Low || most.High < least.High)
            bench.Report(ConformanceCodes.NotMonotone, pair.Name, "The better record gets {better}, the worse {worse}, for {part}.",
                ("better", most), ("worse", least), ("part", Bench.Of(part)));
    }
}
