using FixScore.Tests.Criteria;

namespace FixScore.Tests.Reading.Profiles;

/// <summary>Each kind of option has one JSON form, on the scale of the node.</summary>
public sealed class OptionReaderTests
{
    [Fact]
    public void Options_left_out_have_their_defaults_on_the_scale()
    {
        var options = Read("{}");
        Assert.Equal((0.5m, 3, false, Colour.DarkBlue, WhenNoLevel.Unknown),
            (options.Get(EveryOption.Share), options.Get(EveryOption.Most), options.Get(EveryOption.Strict), options.Get(EveryOption.Shade), options.Get(Options.NoLevel)));
        Assert.Equal([(2m, 20m), (6m, 10m)], options.Get(EveryOption.Steps).Entries.Select(band => (band.Limit, band.Points)));
        Assert.Equal([("reusable", 20m), ("removable", 10m)], options.Get(EveryOption.Reuse).Entries.Select(level => (level.Word, level.Points)));
        Assert.Equal("gasket", Assert.Single(options.Get(EveryOption.Ignored)));
    }

    [Fact]
    public void Options_stated_are_taken()
    {
        var options = Read("""
            { "share": 1, "most": 20, "strict": true, "shade": "red", "steps": [{ "at": 1, "points": 20 }, { "at": 9.5, "points": 0 }],
              "reuse": { "neither": 0, "reusable": 12.5 }, "ignored": [], "noLevel": "lowest" }
            """);
        Assert.Equal((1m, 20, true, Colour.Red, WhenNoLevel.Lowest),
            (options.Get(EveryOption.Share), options.Get(EveryOption.Most), options.Get(EveryOption.Strict), options.Get(EveryOption.Shade), options.Get(Options.NoLevel)));
        Assert.Equal((BandForm.At, 9.5m, 0m), (options.Get(EveryOption.Steps).Form, options.Get(EveryOption.Steps).Entries[1].Limit, options.Get(EveryOption.Steps).Entries[1].Points));
        Assert.Equal([("neither", 0m), ("reusable", 12.5m)], options.Get(EveryOption.Reuse).Entries.Select(level => (level.Word, level.Points)));
        Assert.Empty(options.Get(EveryOption.Ignored));
    }

    [Theory]
    [InlineData("""{ "share": 1.01 }""", "out-of-range /root/options/share")]
    [InlineData("""{ "share": -0.01 }""", "out-of-range /root/options/share")]
    [InlineData("""{ "share": "1" }""", "wrong-type /root/options/share")]
    [InlineData("""{ "share": { "min": 0, "max": 1 } }""", "wrong-type /root/options/share")]
    [InlineData("""{ "share": 0.1234567890123456 }""", "number-range /root/options/share")]
    [InlineData("""{ "most": 0 }""", "out-of-range /root/options/most")]
    [InlineData("""{ "most": 21 }""", "out-of-range /root/options/most")]
    [InlineData("""{ "most": 2.5 }""", "out-of-range /root/options/most")]
    [InlineData("""{ "most": 99999999999999 }""", "out-of-range /root/options/most")]
    [InlineData("""{ "strict": 1 }""", "wrong-type /root/options/strict")]
    [InlineData("""{ "shade": "blue" }""", "unknown-word /root/options/shade")]
    [InlineData("""{ "shade": "DarkBlue" }""", "unknown-word /root/options/shade")]
    [InlineData("""{ "shade": ["red"] }""", "wrong-type /root/options/shade")]
    [InlineData("""{ "steps": [] }""", "too-few /root/options/steps")]
    [InlineData("""{ "steps": [{ "atMost": 1, "points": 21 }] }""", "points-off-scale /root/options/steps/0/points")]
    [InlineData("""{ "steps": [{ "atLeast": 1, "points": 0 }, { "atLeast": 2, "points": 1 }] }""", "bands-unsorted /root/options/steps")]
    [InlineData("""{ "reuse": { "reusable": 21 } }""", "points-off-scale /root/options/reuse/reusable")]
    [InlineData("""{ "reuse": { "reuseable": 2 } }""", "unknown-word /root/options/reuse/reuseable")]
    [InlineData("""{ "reuse": [] }""", "wrong-type /root/options/reuse")]
    [InlineData("""{ "ignored": ["No Slug"] }""", "wrong-text /root/options/ignored/0")]
    [InlineData("""{ "ignored": "gasket" }""", "wrong-type /root/options/ignored")]
    [InlineData("""{ "stepps": [] }""", "unknown-member /root/options/stepps")]
    public void Options_that_do_not_fit_are_told(string options, string told) => Assert.Equal([told], Profile(options).Told());

    [Theory]
    [InlineData("""{ "share": 1.01 }""", "A number from 0 to 1 is asked.")]
    [InlineData("""{ "most": 21 }""", "A whole number from 1 to 20 is asked.")]
    [InlineData("""{ "shade": "blue" }""", "'blue' is none of the words known here.")]
    [InlineData("""{ "reuse": { "reuseable": 2 } }""", "'reuseable' is none of the words known here.")]
    public void What_does_not_fit_is_told_with_what_would(string options, string message) => Assert.Equal(message, Assert.Single(Profile(options).Problems).Problem.Message);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void The_ends_of_a_range_belong_to_it(int share) => Assert.Equal(share, Read($$"""{ "share": {{share}} }""").Get(EveryOption.Share));

    [Fact]
    public void Falling_limits_are_the_order_of_at_least() => Assert.Equal(
        [2m, 1m], Read("""{ "steps": [{ "atLeast": 2, "points": 20 }, { "atLeast": 1, "points": 5 }] }""").Get(EveryOption.Steps).Entries.Select(band => band.Limit));

    [Fact]
    public void Terms_of_a_sum_have_options_on_their_own_scale()
    {
        var profile = Texts.ProfileWith("""
            { "root": { "id": "root", "aggregate": "sum", "of": [
              { "id": "a", "weight": 1, "scale": { "min": 0, "max": 4 }, "criterion": "every-option" },
              { "id": "b", "weight": 0.5, "scale": { "min": 0, "max": 12 }, "criterion": "every-option", "options": { "steps": [{ "atMost": 3, "points": 12 }] } }
            ] } }
            """).OrThrow();
        Assert.Equal([4m, 12m], ((GroupNode)profile.Root).Of.Cast<LeafNode>().Select(leaf => leaf.Options.Get(EveryOption.Steps).Entries[0].Points));
    }

    [Theory]
    [InlineData("9e14", "9e14")]
    [InlineData("1", "11")]
    public void A_sum_that_can_leave_its_scale_is_refused(string weight, string max) => Assert.Contains("sum-leaves-scale /root", Texts.ProfileWith($$"""
        { "root": { "id": "root", "aggregate": "sum", "of": [{ "id": "a", "weight": {{weight}}, "scale": { "min": 0, "max": {{max}} }, "criterion": "documentation" }] } }
        """).Told());

    [Fact]
    public void A_sum_over_parts_that_can_leave_its_scale_is_refused() => Assert.Equal(["sum-leaves-scale /root/over"], Texts.ProfileWith("""
        { "root": { "id": "root", "criterion": "adhesive-strength", "over": { "set": "main", "aggregate": "sum", "instances": "lowest", "absent": "skip" } } }
        """).Told());

    static OptionValues Read(string options) => ((LeafNode)Profile(options).OrThrow().Root).Options;

    static ReadResult<Profile> Profile(string options) => Texts.ProfileWith($$"""
        { "scale": { "min": 0, "max": 20, "decimals": 1, "rounding": "half-up" }, "root": { "id": "root", "criterion": "every-option", "options": {{options}} } }
        """);
}
