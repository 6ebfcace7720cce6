using FixScore.Disassembly.Tests.Oracle;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Routes to every part equal what trying every sequence of operations shows: whether there is one, what it costs and which it is.</summary>
/// <remarks>In classes of their own, so that they run side by side.</remarks>
public abstract class AllSequencesTests(int firstSeed)
{
    const int Records = 5_000;

    [Fact]
    public void Routes_equal_the_best_of_all_sequences()
    {
        for (var seed = firstSeed; seed < firstSeed + Records; seed++)
            Shrinking.FailOn(RandomRecords.Of(seed), Comparison.Differences);
    }

    public sealed class First() : AllSequencesTests(0);

    public sealed class Second() : AllSequencesTests(5_000);

    public sealed class Third() : AllSequencesTests(10_000);

    public sealed class Fourth() : AllSequencesTests(15_000);
}
