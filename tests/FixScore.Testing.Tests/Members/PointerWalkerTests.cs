using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class PointerWalkerTests
{
    static readonly PointerWalker Walker = new(new RecordBuilder()
        .Part("a").Part("b", configure: part => part with { Specs = [new() { Name = "mass", Value = 5, Unit = "g" }] })
        .Screw("s", ["a", "b"], "slotted", 2, 4)
        .Swap("trial", "unit-a", [("a", "unit-b")], ("charging", SwapResult.Works)).Build());

    [Theory]
    [InlineData("")]
    [InlineData("/device")]
    [InlineData("/assessment/units/1")]
    [InlineData("/joints")]
    [InlineData("/joints/0/screw/drive")]
    [InlineData("/joints/0/joins/1")]
    [InlineData("/parts/1/specs/0/value")]
    [InlineData("/swaps/0/checks/0/result")]
    [InlineData("/swaps/0/installed/a")]
    public void What_the_record_has_is_found(string pointer) => Assert.True(Walker.Exists(new(pointer)));

    [Theory]
    [InlineData("/parts/2")]
    [InlineData("/parts/0/specs/0")]
    [InlineData("/joints/0/adhesive")]
    [InlineData("/joints/0/colour")]
    [InlineData("/swaps/0/checks/1")]
    [InlineData("/swaps/1/installed/a")]
    [InlineData("/colour")]
    [InlineData("/spares")]
    [InlineData("nonsense")]
    public void What_it_lacks_is_not(string pointer) => Assert.False(Walker.Exists(new(pointer)));

    [Theory]
    [InlineData("/spares", true)]
    [InlineData("/joints/0/adhesive/type", true)]
    [InlineData("/device/price", true)]
    [InlineData("/parts/2", false)]
    [InlineData("/parts/2/serialised", false)]
    [InlineData("/joints/0/colour", false)]
    public void What_could_be_there_may_be_missing(string pointer, bool could) => Assert.Equal(could, Walker.CouldExist(new(pointer)));

    [Fact]
    public void Every_entry_of_a_sample_is_where_its_case_says()
    {
        foreach (var record in SampleRecords.All)
        {
            var (source, walker) = (new RecordCase(record), new PointerWalker(record));
            foreach (var (entry, _) in RecordIds.Defined(record)) Assert.True(walker.Exists(source.At(entry)));
        }
    }
}
