namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>
/// A standalone biometric component used for authentication may be paired: Colorado HB24-1121 (read); Washington HB 1483 (read), not when bundled into
/// commonly replaced parts such as screen, keyboard, port, battery. For Oregon SB 1596 exceptions were not read.
/// </summary>
public sealed class BiometricTests
{
    static RecordBuilder Sensor => Phone.Bare.Part("sensor", "fingerprint-sensor");

    static Finding Blocked(RecordBuilder builder, string set) => builder.Tried("sensor", SwapResult.Refused).Find(set, "blocked-part");

    [Theory]
    [InlineData("us-co-hb24-1121", FindingStatus.NotApplicable, "excepted")]
    [InlineData("us-wa-hb-1483", FindingStatus.NotApplicable, "excepted")]
    [InlineData("us-or-sb-1596", FindingStatus.Unknown, "exception-open")]
    public void A_sensor_that_is_replaced_by_itself(string set, FindingStatus status, string code) =>
        Assert.Equal((status, code), (Blocked(Sensor, set).Status, Blocked(Sensor, set).Why.Code));

    [Theory]
    [InlineData("us-co-hb24-1121", FindingStatus.NotMet)]
    [InlineData("us-wa-hb-1483", FindingStatus.NotMet)]
    [InlineData("us-or-sb-1596", FindingStatus.Unknown)]
    public void A_sensor_bundled_into_the_screen(string set, FindingStatus status) =>
        Assert.Equal(status, Blocked(Sensor.Part("display", Roles.DisplayAssembly).Integral("sensor", "display"), set).Status);

    [Theory]
    [InlineData("us-co-hb24-1121")]
    [InlineData("us-wa-hb-1483")]
    [InlineData("us-or-sb-1596")]
    public void A_sensor_bundled_into_a_part_that_no_law_names_is_open(string set) =>
        Assert.Equal("exception-open", Blocked(Sensor.Part("button").Integral("sensor", "button"), set).Why.Code);

    [Fact]
    public void An_inert_bracket_on_it_leaves_it_by_itself() =>
        Assert.Equal("excepted", Blocked(Sensor.Part("bracket").Integral("sensor", "bracket"), "us-co-hb24-1121").Why.Code);

    [Fact]
    public void A_sensor_that_works_needs_no_exception() => Assert.All(Phone.Sets, set =>
        Assert.Equal("cleared", Sensor.Tried("sensor", SwapResult.Works).Find(set, "blocked-part").Why.Code));

    [Theory]
    [InlineData("us-co-hb24-1121", FindingStatus.Met)]
    [InlineData("us-wa-hb-1483", FindingStatus.Met)]
    [InlineData("us-or-sb-1596", FindingStatus.Unknown)]
    public void What_is_allowed_for_the_sensor_is_not_held_against_the_device(string set, FindingStatus status) =>
        Assert.Equal(status, Blocked(Sensor.Part("battery").Tried("battery", SwapResult.Works), set).Status);

    [Fact]
    public void A_sensor_never_tried_is_open_only_where_it_is_not_excepted()
    {
        Assert.Equal("excepted", Sensor.Find("us-wa-hb-1483", "blocked-part").Why.Code);
        Assert.Equal("not-tried", Sensor.Find("us-or-sb-1596", "blocked-part").Why.Code);
    }
}
