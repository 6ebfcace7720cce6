using System.Collections.Immutable;
using FixScore.Analysis.Assessors;
using FixScore.Analysis.Tests.Comparing;
using FixScore.Records;

namespace FixScore.Analysis.Tests.Assessors;

/// <summary>Several records of one device. Counted by hand, no source.</summary>
public sealed class AssessorComparisonTests
{
    static readonly Profile Even = Bench.Profile("even", 1, 1);

    [Fact]
    public void Lines_stand_side_by_side_as_shares_of_their_scale()
    {
        var comparison = AssessorComparison.Of([Bench.Document("one", 90, 20), Bench.Document("two", 90, 30)], Even);
        Assert.Equal([("root/first", "t.a", true), ("root/second", "t.b", false)], comparison.Lines.Select(line => (line.Path, line.Criterion, line.Agrees)));
        Assert.Equal([0.2m, 0.3m], comparison.Lines[1].Values.Select(value => value!.Value.Low));
        Support.Equal<Interval>([55m, 60m], comparison.Totals);
    }

    [Fact]
    public void Agreement_is_that_of_the_lines()
    {
        var comparison = AssessorComparison.Of([Bench.Document("one", 90, 20), Bench.Document("two", 90, 30)], Even);
        // Values .9 .9 and .2 .3, squared differences: 2 x .01 observed, 4 x .49 + 4 x .36 + 2 x .01 expected.
        Support.Near(1 - 3 * 0.02 / 3.42, comparison.Alpha.Alpha);
        Support.Near(0.985, comparison.Intraclass?.OneWay?.Value, 0.01);
    }

    [Fact]
    public void Open_values_are_missing()
    {
        var comparison = AssessorComparison.Of([Bench.Document("one", 90, null), Bench.Document("two", 90, 30)], Even);
        Assert.Null(comparison.Intraclass);
        Assert.Equal(2, comparison.Alpha.Pairable);
        Assert.False(comparison.Lines[1].IsComplete);
    }

    [Fact]
    public void Alone_nobody_agrees() => Assert.Throws<ArgumentException>(() => AssessorComparison.Of([Bench.Document("one", 1, 1)], Even));

    [Fact]
    public void Entries_are_matched_by_id_wherever_they_stand()
    {
        var one = Bench.Record("one", 90, 20).Build();
        var two = one with { Id = "two", Parts = EntryList.Of(one.Parts.AsArray().Reverse().Select(Renamed).ToImmutableArray()) };
        var found = Assert.Single(RecordDisagreements.Between([one, two]));
        Assert.Equal("/parts/cell/role", found.Path.Text);
        Assert.Equal(["/parts/1/role", "/parts/0/role"], found.At.Select(at => at!.Value.Text));
        Support.Equal(["\"battery\"", "\"charging-coil\""], found.Values);
        Assert.False(found.IsSilence);
    }

    [Fact]
    public void What_one_assessor_left_out_is_silence()
    {
        var found = Assert.Single(RecordDisagreements.Between([Bench.Record("one", 90, 20).Build(), Bench.Record("two", 90, null).Build()]));
        Assert.Equal("/observations/t.b", found.Path.Text);
        Assert.Null(found.At[1]);
        Assert.True(found.IsSilence);
    }

    [Fact]
    public void Neither_the_assessor_nor_the_order_of_words_is_a_disagreement()
    {
        var one = Bench.Record("one", 90, 20).Joint("glue", ["board", "cell"], JointKind.Adhesive).Build();
        var two = Bench.Record("two", 90, 20).Joint("glue", ["cell", "board"], JointKind.Adhesive)
            .With(record => record with { Assessment = record.Assessment with { Assessor = "another bench", Date = new(2026, 2, 1) } }).Build();
        Assert.Empty(RecordDisagreements.Between([one, two]));
    }

    [Fact]
    public void Several_entries_about_the_same_are_matched_in_turn()
    {
        var one = Bench.Record("one", 1, 2).Remark("seal", "dry").Remark("seal", "torn").Build();
        var two = Bench.Record("two", 1, 2).Remark("seal", "dry").Remark("seal", "worn").Build();
        Assert.Equal("/findings/seal 2/text", Assert.Single(RecordDisagreements.Between([one, two])).Path.Text);
    }

    static Part Renamed(Part part) => part.Id == "cell" ? part with { Role = "charging-coil" } : part;
}
