using System.Text.Json.Nodes;

namespace FixScore.Requirements.Tests;

/// <summary>Laws that every set of requirements keeps, on samples, generated records and the records of the demo.</summary>
static class Answering
{
    static readonly string Demo = Path.Combine(AppContext.BaseDirectory, "Demo");

    public static void Of(Installed<IRequirementSet> set, DateOnly date, int count)
    {
        TeardownRecord[] demo = [.. Directory.GetFiles(Demo, "*.json").Order(StringComparer.Ordinal).Select(file => RecordFile.Load(file).Record)];
        Assert.Equal(4, demo.Length);
        foreach (var record in demo.Concat(SampleRecords.All).Concat(RecordGenerator.Many(30)))
            foreach (var kind in (string[])[record.Device.Kind, "smartphone", "slate-tablet"])
                Holds(set, record with { Device = record.Device with { Kind = kind } }, date, count);
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
