using FixScore.Criteria.Time;

namespace FixScore.Criteria.Tests.Time;

/// <summary>
/// BasicMOST: worked examples and the table of process time as a published summary of K. B. Zandin, MOST Work Measurement
/// Systems, prints them (secondary). That 100 000 TMU are an hour: Vanegas et al., Resources, Conservation and Recycling 135 (2018).
/// </summary>
public sealed class Published_work_measurement
{
    [Theory]
    [InlineData("A6 B6 G1 A1 B0 P3 A0", 17, "6.12")]
    [InlineData("A1 B0 G1 A1 B0 P3 F10 A1 B0 P1 A0", 18, "6.48")]
    public void A_published_sequence_takes_its_published_time(string text, int sum, string seconds)
    {
        var sequence = WorkSequence.Parse(text);
        Assert.Equal(sum, sequence.Sum);
        Assert.Equal(Number(seconds), BasicMost.SecondsOf(sequence.Sum));
    }

    [Fact]
    public void A_published_controlled_move_of_130_TMU_takes_4_68_seconds() => Assert.Equal(4.68m, BasicMost.SecondsOf(13));

    [Fact]
    public void An_hour_has_a_hundred_thousand_TMU() => Assert.Equal(3600m, BasicMost.SecondsOf(10_000));

    [Theory]
    [InlineData("0.5", 1)]
    [InlineData("0.51", 3)]
    [InlineData("1.5", 3)]
    [InlineData("2.5", 6)]
    [InlineData("4.5", 10)]
    [InlineData("7", 16)]
    [InlineData("9.5", 24)]
    [InlineData("13", 32)]
    [InlineData("17", 42)]
    [InlineData("21.5", 54)]
    [InlineData("26", 67)]
    [InlineData("31.5", 81)]
    [InlineData("37", 96)]
    [InlineData("43.5", 113)]
    [InlineData("50.5", 131)]
    [InlineData("58", 152)]
    [InlineData("66", 173)]
    [InlineData("74.5", 196)]
    [InlineData("83.5", 220)]
    [InlineData("92.5", 245)]
    [InlineData("102", 270)]
    [InlineData("113", 300)]
    [InlineData("113.1", 330)]
    [InlineData("124", 330)]
    public void Process_time_has_the_first_column_that_is_not_below_it(string seconds, int index) =>
        Assert.Equal(index, BasicMost.ProcessIndex(Number(seconds)));

    // Own rule, no source: past the table whole indices, so that more time is never less.
    [Fact]
    public void Past_the_table_seconds_become_whole_indices()
    {
        Assert.Equal(10_000, BasicMost.ProcessIndex(3600));
        Assert.Equal(345, BasicMost.ProcessIndex(124.1m));
    }

    [Fact]
    public void No_process_has_no_index() => Assert.Equal(0, BasicMost.ProcessIndex(0));

    static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
