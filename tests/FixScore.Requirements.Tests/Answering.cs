using System.Text.Json.Nodes;

namespace FixScore.Requirements.Tests;

/// <summary>Laws that every set of requirements keeps, on samples, generated records and the records of the demo.</summary>
static class Answering
{
    static readonly string Demo = Path.Combine(AppContext.BaseDirectory, "Demo");

    static readonly Func<TeardownRecord, TeardownRecord>[] Forgetting =
    [
        record => record with { Spares = default }, record => record with { Documentation = default }, record => record with { Operations = default },
        record => record with { Swaps = default }, record => record with { Absent = default }, record => record with { Support = null },
        record => record with { Joints = [.. record.Joints.Select(joint => joint with { Reuse = default })] },
        record => record with { Operations = [.. record.Operations.Select(operation => operation with { Environment = default, Skill = default })] },
        record => record with { Operations = [.. record.Operations.Select(operation => operation with { Tools = default, OrTools = [] })] },
        record => record with { Spares = [.. record.Spares.Select(spare => spare with { Audience = default, Years = null, DeliveryDays = null, FastenersIncluded = null })] },
    ];

    static TeardownRecord[] DemoRecords => [.. Directory.GetFiles(Demo, "*.json").Order(StringComparer.Ordinal).Select(file => RecordFile.Load(file).Record)];

    public static void Of(Installed<IRequirementSet> set, DateOnly date, int count)
    {
        Assert.Equal(5, DemoRecords.Length);
        foreach (var record in DemoRecords.Concat(SampleRecords.All).Concat(RecordGenerator.Many(30)))
            foreach (var kind in (string[])[record.Device.Kind, "smartphone", "slate-tablet"])
                Holds(set, record with { Device = record.Device with { Kind = kind } }, date, count);
    }

    /// <summary>Fails when a record that tells less gets a finding decided that was not decided so before.</summary>
    public static void LessWhenLessIsKnown(Installed<IRequirementSet> set, DateOnly date)
    {
        foreach (var record in DemoRecords)
            foreach (var forget in Forgetting)
                Assert.All(set.Check(new RecordCase(record), date).Zip(set.Check(new RecordCase(forget(record)), date)), pair =>
                    Assert.True(pair.Second.Status is FindingStatus.Unknown or FindingStatus.NotApplicable || pair.Second.Status == pair.First.Status,
                        $"{pair.First.Rule}: {pair.First.Status}, {pair.Second.Status} ({pair.Second.Why.Text})"));
    }

    static void Holds(Installed<IRequirementSet> set, TeardownRecord record, DateOnly date, int count)
    {
        var findings = set.Check(new RecordCase(record), date);
        Assert.Equal(count, findings.Select(finding => finding.Rule).Distinct().Count());
        Assert.Equal(count, findings.Length);
        Assert.Equal(findings.Select(Text), set.Check(new RecordCase(record), date).Select(Text));
        var json = JsonNode.Parse(RecordFile.ToJson(record))!;
        Assert.All(findings, finding =>
        {
            Assert.Matches("^[a-z0-9]+([.-][a-z0-9]+)*$", finding.Rule);
            Assert.DoesNotContain("{", finding.Why.Text, StringComparison.Ordinal);
            Assert.All(finding.Why.Pointers, pointer => Assert.NotNull(At(json, pointer)));
        });
    }

    static string Text(Finding finding) => $"{finding.Rule} {finding.Article} {finding.Status} {finding.Why.Code} {finding.Why.Text} {string.Join(' ', finding.Why.Pointers)}";

    static JsonNode? At(JsonNode? node, Pointer pointer) => pointer.Text.Split('/').Skip(1).Aggregate(node, (at, name) =>
        at is JsonArray list ? list[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)] : at?[name]);
}
