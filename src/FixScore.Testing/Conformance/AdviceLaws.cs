using FixScore.Patching;

namespace FixScore.Testing;

/// <summary>A suggested change applies cleanly, leaves a valid record, and never lowers what the criterion itself gives at least.</summary>
static class AdviceLaws
{
    public static void Check(Bench bench)
    {
        if (bench.Criterion is not IDesignAdvisor advisor) return;
        foreach (var sample in bench.Samples)
            foreach (var change in Suggested(bench, advisor, sample))
                Check(bench, sample, change);
    }

    static DesignChange[] Suggested(Bench bench, IDesignAdvisor advisor, Sample sample)
    {
        try
        {
            DesignChange[] changes = [.. advisor.Suggest(new(sample.Case, bench.Scale, OptionValues.DefaultsOf(bench.Criterion.Info, bench.Scale)))];
            foreach (var twice in changes.CountBy(change => change.Id, StringComparer.Ordinal).Where(count => count.Value > 1))
                bench.Report(ConformanceCodes.AdviceMalformed, sample.Name, "The id '{id}' names several changes.", ("id", twice.Key));
            return changes;
        }
        catch (Exception failure)
        {
            bench.Report(ConformanceCodes.Throws, sample.Name, "Suggesting failed: {fault}", ("fault", $"{failure.GetType().Name}: {failure.Message}"));
            return [];
        }
    }

    static void Check(Bench bench, Sample sample, DesignChange change)
    {
        if (!RecordIds.IsSlug(change.Id)) bench.Report(ConformanceCodes.AdviceMalformed, sample.Name, "The id '{id}' is not a slug.", ("id", change.Id));
        OutcomeLaws.CheckReason(bench, sample, change.Why);
        if (Changed(bench, sample, change) is not { } changed) return;
        var before = bench.Judge(sample, bench.Scale).ToDictionary(each => each.Part, each => each.Outcome!, StringComparer.Ordinal);
        foreach (var after in bench.Judge(changed, bench.Scale))
            if (before.TryGetValue(after.Part, out var outcome)) Compare(bench, sample, change, after.Part, outcome, after.Outcome!);
    }

    static Sample? Changed(Bench bench, Sample sample, DesignChange change)
    {
        try
        {
            var read = RecordPatch.Apply(sample.Record, change.JsonPatch);
            if (read.IsValid) return new Sample($"{sample.Name} with {change.Id}", read.Value.Record);
            bench.Report(ConformanceCodes.AdviceInvalid, sample.Name, "With the change '{id}' the record is wrong: {problem}",
                ("id", change.Id), ("problem", read.Problems.First(each => each.Problem.Severity == Severity.Error).Problem.Message));
        }
        catch (JsonPatchException failure)
        {
            bench.Report(ConformanceCodes.AdviceMalformed, sample.Name, "The change '{id}' does not apply: {fault}", ("id", change.Id), ("fault", failure.Message));
        }
        return null;
    }

    static void Compare(Bench bench, Sample sample, DesignChange change, string part, Outcome before, Outcome after)
    {
        if (Judgement.PointsOf(before, bench.Scale) is not { } was || Judgement.PointsOf(after, bench.Scale) is not { } now || now.Low >= was.Low) return;
        bench.Report(ConformanceCodes.AdviceLowers, sample.Name, "The change '{id}' turns {before} into {after} for {part}.",
            ("id", change.Id), ("before", was), ("after", now), ("part", Bench.Of(part)));
    }
}
