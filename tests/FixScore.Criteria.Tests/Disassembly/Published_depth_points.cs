using FixScore.Criteria.Disassembly;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, disassembly depth: all rows of the table, and the steps that remote demands add.</summary>
public sealed class Published_depth_points
{
    static readonly DisassemblyDepthCriterion Criterion = new();

    static readonly (Option, object)[] OfTheLaw = [(DisassemblyDepthOptions.NotificationSteps, 5m), (DisassemblyDepthOptions.AuthorisationSteps, 5m)];

    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 5)]
    [InlineData(3, 4)]
    [InlineData(5, 4)]
    [InlineData(6, 3)]
    [InlineData(10, 3)]
    [InlineData(11, 2)]
    [InlineData(15, 2)]
    [InlineData(16, 1)]
    [InlineData(40, 1)]
    public void Steps_have_the_points_of_the_table(int steps, int points)
    {
        var outcome = Criterion.OnBattery(Device.Layers(steps).Build());
        Assert.Equal(points, outcome.Score);
        Assert.Equal($"Part battery lies {steps} steps deep.", outcome.Because("depth").Text);
    }

    // Each of the two actions adds 5 steps: 6 become 16 with both, 11 with one.
    [Theory]
    [InlineData(SerialAction.Remote, SerialAction.Remote, 16, 1)]
    [InlineData(SerialAction.Remote, SerialAction.None, 11, 2)]
    [InlineData(SerialAction.None, SerialAction.Remote, 11, 2)]
    [InlineData(SerialAction.Local, SerialAction.Local, 6, 3)]
    [InlineData(SerialAction.None, SerialAction.None, 6, 3)]
    public void Six_steps_and_what_remote_demands_add(SerialAction notify, SerialAction authorise, int steps, int points)
    {
        var outcome = Criterion.OnBattery(Serialised(new() { Notify = notify, Authorise = authorise }), OfTheLaw);
        Assert.Equal(points, outcome.Score);
        Assert.Equal($"Part battery lies {steps} steps deep.", outcome.Because("depth").Text);
    }

    [Fact]
    public void Without_the_options_of_the_law_demands_add_nothing() => Assert.Equal(
        3, Criterion.OnBattery(Serialised(new() { Notify = SerialAction.Remote, Authorise = SerialAction.Remote })).Score);

    [Fact]
    public void What_was_not_recorded_may_add_its_steps_or_by_option_adds_none()
    {
        var unknown = Criterion.OnBattery(Serialised(null), OfTheLaw);
        Assert.Equal(new Interval(1, 3), unknown.Score);
        Assert.Equal("/parts/6", Assert.Single(unknown.Missing).At.Text);
        Assert.Equal(3, Criterion.OnBattery(
            Serialised(null), [.. OfTheLaw, (DisassemblyDepthOptions.SerialisedUnknown, WhenDemandUnknown.None)]).Score);
    }

    [Fact]
    public void A_choice_of_words_widens_whatever_the_option_says() => Assert.Equal(new Interval(2, 3), Criterion.OnBattery(
        Serialised(new() { Notify = new(SerialAction.Local, SerialAction.Remote), Authorise = SerialAction.None }),
        [.. OfTheLaw, (DisassemblyDepthOptions.SerialisedUnknown, WhenDemandUnknown.None)]).Score);

    [Fact]
    public void An_inert_part_carries_no_code() =>
        Assert.Equal(3, Criterion.OnBattery(Device.Layers(6, battery => battery with { Inert = true }).Build(), OfTheLaw).Score);

    static TeardownRecord Serialised(Serialisation? demands) => Device.Layers(6, battery => battery with { Serialised = demands }).Build();
}
