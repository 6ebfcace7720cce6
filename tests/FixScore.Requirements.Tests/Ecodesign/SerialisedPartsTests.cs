namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B/D 1.1(7), consolidated text of 20 June 2025 (read): access to the means within 3 working days, for end users too in list (c).</summary>
public sealed class SerialisedPartsTests
{
    const string Article = "Annex II B 1.1(7)";

    static RecordBuilder Serialised(string part, Serialisation? demands) => Device.Phone.Part(part, configure: each => each with { Serialised = demands });

    static Serialisation Asking(OneOf<Audience> audience, Quantity? days) =>
        new() { Notify = SerialAction.Remote, Authorise = SerialAction.None, Audience = audience, AccessDays = days };

    [Theory]
    [InlineData("speaker", Audience.Repairers, FindingStatus.Met, "serialised-access")]
    [InlineData("speaker", Audience.Authorised, FindingStatus.NotMet, "serialised-audience")]
    [InlineData("display-assembly", Audience.Public, FindingStatus.Met, "serialised-access")]
    [InlineData("display-assembly", Audience.Repairers, FindingStatus.NotMet, "serialised-audience")]
    public void Who_may_have_the_part_may_have_the_means(string part, Audience audience, FindingStatus status, string code) =>
        Serialised(part, Asking(audience, 3)).Says($"serialised-parts.{part}", Article, status, code);

    [Fact]
    public void Access_takes_three_days_at_most()
    {
        Serialised("speaker", Asking(Audience.Public, 4)).Says("serialised-parts.speaker", Article, FindingStatus.NotMet, "serialised-days");
        Serialised("speaker", Asking(Audience.Public, null)).Says("serialised-parts.speaker", Article, FindingStatus.Unknown, "serialised-days");
        Serialised("speaker", Asking(default, 3)).Says("serialised-parts.speaker", Article, FindingStatus.Unknown, "serialised-audience");
    }

    [Fact]
    public void A_part_that_is_not_serialised_needs_no_means() =>
        Serialised("speaker", new() { Notify = SerialAction.None, Authorise = SerialAction.None }).Says("serialised-parts.speaker", Article, FindingStatus.NotApplicable, "not-serialised");

    [Fact]
    public void Whether_it_is_may_be_unknown()
    {
        Serialised("speaker", null).Says("serialised-parts.speaker", Article, FindingStatus.Unknown, "serialisation-unknown");
        Serialised("speaker", new() { Notify = SerialAction.None, AccessDays = 9 }).Says("serialised-parts.speaker", Article, FindingStatus.Unknown, "serialisation-unknown");
        Serialised("speaker", new() { Audience = Audience.Public, AccessDays = 3 }).Says("serialised-parts.speaker", Article, FindingStatus.Met, "serialised-access");
    }

    [Fact]
    public void An_inert_part_cannot_be() => Device.Phone.Part("sim-tray").Says("serialised-parts.sim-tray", Article, FindingStatus.NotApplicable, "inert");

    [Fact]
    public void The_means_for_a_battery_that_lasts_are_for_professionals()
    {
        Serialised("battery", Asking(Audience.Repairers, 3)).Lasting(83, 1000, "IP67").Says("serialised-parts.battery", Article, FindingStatus.Met, "serialised-access");
        Serialised("battery", Asking(Audience.Repairers, 3)).Lasting(82, 1000, "IP67").Says("serialised-parts.battery", Article, FindingStatus.NotMet, "serialised-audience");
    }
}
