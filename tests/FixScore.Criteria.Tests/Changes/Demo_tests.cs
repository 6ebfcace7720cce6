using FixScore.Patching;

namespace FixScore.Criteria.Tests.Changes;

/// <summary>Every change that any criterion suggests for a record of the demo applies and leaves a record without errors.</summary>
public sealed class Demo_tests
{
    static readonly Catalogue Installed = Conformance_tests.Installed;

    public static TheoryData<string> Records =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Demo"), "*.json").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Records))]
    public void Every_suggestion_applies_and_leaves_a_valid_record(string file)
    {
        var record = RecordFile.Load(Path.Combine(AppContext.BaseDirectory, "Demo", file), Installed).Record;
        var (source, suggested) = (new RecordCase(record), 0);
        foreach (var criterion in Installed.Criteria.Select(each => each.Item))
            foreach (var change in Suggested(criterion, source))
            {
                var read = RecordPatch.Apply(record, change.JsonPatch);
                Assert.True(read.IsValid, $"{criterion.Info.Id}/{change.Id}: {string.Join("; ", read.Problems.Select(problem => problem.Problem.Message))}");
                Assert.Empty(RecordDocument.Of(read.Value.Record, Installed).Warnings.Where(each => each.Problem.Severity == Severity.Error));
                suggested++;
            }
        Assert.True(suggested > 5, $"Only {suggested} suggestions.");
    }

    static IEnumerable<DesignChange> Suggested(ICriterion criterion, TeardownCase source) => criterion is IDesignAdvisor advisor
        ? advisor.Suggest(new(source, new(0, 100), OptionValues.DefaultsOf(criterion.Info, new(0, 100))))
        : [];
}
