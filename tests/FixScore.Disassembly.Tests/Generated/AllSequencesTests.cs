using System.Globalization;
using FixScore.Disassembly.Tests.Oracle;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Routes to every part equal what trying every sequence of operations shows: whether there is one, what it costs and which it is.</summary>
/// <remarks>In classes of their own, so that they run side by side. A long run takes its number of records from the environment.</remarks>
public abstract class AllSequencesTests(int quarter)
{
    const string LongRun = "FIXSCORE_ROUTE_RECORDS";

    static readonly int Records = int.Parse(Environment.GetEnvironmentVariable(LongRun) ?? "20000", CultureInfo.InvariantCulture);

    [Fact]
    public void Routes_equal_the_best_of_all_sequences()
    {
        for (var seed = quarter; seed < Records; seed += 4)
            Shrinking.FailOn(RandomRecords.Of(seed), Comparison.Differences);
    }

    /// <summary>Records a long run stumbled on.</summary>
    public sealed class Stumbled
    {
        [Theory]
        [InlineData(40_195)] // A tool taken up early by an operation that does nothing else saves a step.
        [InlineData(60_336)] // The same.
        public void Routes_equal_the_best_of_all_sequences(int seed) => Shrinking.FailOn(RandomRecords.Of(seed), Comparison.Differences);
    }

    public sealed class First() : AllSequencesTests(0);

    public sealed class Second() : AllSequencesTests(1);

    public sealed class Third() : AllSequencesTests(2);

    public sealed class Fourth() : AllSequencesTests(3);
}
