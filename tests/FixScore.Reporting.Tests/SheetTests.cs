using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Tests;

public sealed class SheetTests
{
    static readonly TeardownRecord Slate = Bench.Judge("larkfield-slate-2", "bench-balanced").Record;

    static SheetPlan Plan(TeardownRecord record) => SheetPlan.Of(new RecordCase(record), record.Parts.AsArray());

    static TeardownRecord WithScrews(params ImmutableArray<decimal?> lengths)
    {
        var screws = Slate.Joints.Where(joint => joint.Kind == JointKind.Screw).Select(joint => joint.Id).ToArray();
        return Slate with
        {
            Joints = [.. Slate.Joints.Select(joint => Array.IndexOf(screws, joint.Id) is var at && at >= 0
                ? joint with { Screw = new("cross", 1.4m, lengths[at % lengths.Length] is { } length ? length : default(Quantity)) } : joint)],
        };
    }

    [Fact]
    public void Screws_of_one_length_need_not_be_kept_apart()
    {
        var plan = Plan(WithScrews(3m));
        Assert.NotEmpty(plan.Screws);
        Assert.All(plan.Screws, screw => Assert.Empty(screw.KeepApartFrom));
        Assert.Single(plan.Ready.Bits);
    }

    [Fact]
    public void Screws_that_differ_in_length_alone_or_are_not_measured_are_kept_apart()
    {
        Assert.Contains(Plan(WithScrews(3m, 4m)).Screws, screw => !screw.KeepApartFrom.IsEmpty);
        Assert.Contains(Plan(WithScrews(null, null)).Screws, screw => !screw.KeepApartFrom.IsEmpty);
    }

    [Fact]
    public void Each_part_that_comes_loose_has_a_label_for_each_unit()
    {
        var plan = Plan(Slate);
        Assert.All(plan.Labels.GroupBy(label => label.Part), part => Assert.Equal(Slate.Assessment.Units.Select(unit => unit.Id), part.Select(label => label.Unit)));
        Assert.Contains(plan.Labels, label => label.Text.EndsWith("-battery", StringComparison.Ordinal));
    }

    [Fact]
    public void All_nine_sections_are_there_even_when_nothing_can_be_done()
    {
        var text = SheetText.Render(Plan(Slate with { Operations = default }), CultureInfo.InvariantCulture);
        Assert.All(Enumerable.Range(1, 9), number => Assert.Contains($"\n\n{number}. ", text, StringComparison.Ordinal));
        Assert.Contains("Lithium cells:", text, StringComparison.Ordinal);
    }
}
