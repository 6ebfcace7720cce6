using FixScore.Pairing.Planning;
using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>
/// Seconds to exchange parts between two units, by hand: both are opened and closed. The lens rides on the camera, the camera on the frame, the frame on nothing; all are held by
/// a joint of their own, and each operation takes its own power of two.
/// </summary>
public sealed class BenchTimesTests
{
    const int Frame = 1, Camera = 2, Lens = 4, Battery = 8;

    [Theory]
    [InlineData("battery", Battery)]
    [InlineData("lens", Lens)]
    [InlineData("camera", Camera + Lens)] // The lens stays with its unit, so it comes off.
    [InlineData("camera lens", Camera)] // The lens rides along.
    [InlineData("frame lens", Frame + Camera)] // The lens rides along, the camera between them comes off.
    [InlineData("frame", Frame + Camera + Lens)]
    [InlineData("frame camera", Frame + Lens)]
    [InlineData("frame camera lens", Frame)]
    [InlineData("battery frame camera lens", Battery + Frame)]
    public void What_stays_comes_off_and_what_goes_rides_along(string moved, int seconds) => Assert.Equal(4 * seconds, Times(Stack()).SecondsToExchange([.. moved.Split(' ')]));

    [Fact]
    public void A_rider_that_is_nothing_to_software_is_left_where_it_is() => Assert.Equal(
        4 * Camera, Times(Stack(inert: "lens")).SecondsToExchange(["camera"]));

    [Fact]
    public void A_way_without_times_has_none() => Assert.Null(Times(Stack(untimed: "lens")).SecondsToExchange(["lens"]));

    [Fact]
    public void Whether_a_way_back_was_taken_as_long_as_the_way_in_is_kept()
    {
        var times = Times(Stack(noWayBack: "lens"));
        times.SecondsToExchange(["battery"]);
        Assert.False(times.AssumesReassembly);
        Assert.Equal(4 * Lens, times.SecondsToExchange(["lens"]));
        Assert.True(times.AssumesReassembly);
        times.SecondsToExchange(["lens", "camera", "frame"]);
        times.SecondsToExchange(["camera"]);
        Assert.True(times.AssumesReassembly);
        times.SecondsToExchange(["battery"]);
        Assert.True(times.AssumesReassembly);
    }

    [Fact]
    public void Of_a_range_of_seconds_the_middle_counts()
    {
        var record = Stack();
        Assert.Equal(2 * (6 + 4m), Times(record with
        {
            Operations = [.. record.Operations.Select(each => each.Id == "take-lens" ? each with { Seconds = new Quantity(4, 8) } : each)],
        }).SecondsToExchange(["lens"]));
    }

    static BenchTimes Times(TeardownRecord record)
    {
        var source = new RecordCase(record);
        return new(source, record.Parts.Where(part => part.Id != "board").ToDictionary(part => part.Id, part => new SwapUnit(part, [part], 0.5m), StringComparer.Ordinal));
    }

    static TeardownRecord Stack(string? inert = null, string? untimed = null, string? noWayBack = null)
    {
        return Device(
            [Board, Of("frame", null), Of("camera", "frame"), Of("lens", "camera"), Of("battery", null)],
            [Joint("frame", "board"), Joint("camera", "frame"), Joint("lens", "camera"), Joint("battery", "board")], []) with
        {
            Operations = EntryList.Of(Take("frame", Frame), Take("camera", Camera), Take("lens", Lens), Take("battery", Battery)),
        };

        Part Of(string id, string? on) => Bench.Part(id) with { On = on, Inert = id == inert };

        Operation Take(string part, int seconds) => new()
        {
            Id = $"take-{part}", Action = OperationAction.Unscrew, Tools = EntryList.Of<string>(), Undoes = [$"joint-{part}"], Removes = [part],
            Seconds = part == untimed ? null : seconds, ReassemblySeconds = part == noWayBack ? null : seconds,
        };
    }

    static Joint Joint(string part, string on) => new() { Id = $"joint-{part}", Joins = [part, on], Kind = JointKind.Screw };
}
