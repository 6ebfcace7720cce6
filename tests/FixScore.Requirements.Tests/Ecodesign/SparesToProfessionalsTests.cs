namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B/D 1.1(1)(a), consolidated text of 20 June 2025 (read): spares for professional repairers until at least 7 years after end of placement.</summary>
public sealed class SparesToProfessionalsTests
{
    const string Rule = "spares-to-professionals.speaker", Article = "Annex II B 1.1(1)(a)";

    static RecordBuilder Offered(OneOf<Audience> audience, Quantity? years, FastenersIncluded? fasteners = null, Reuse reuse = Reuse.Reusable) => Device.Phone
        .Held("speaker", reuse, ToolClass.Basic, WorkEnvironment.Use, Skill.Layman)
        .Spare("speaker", audience, spare => spare with { Years = years, FastenersIncluded = fasteners });

    // The list of 1.1(1)(a) (read).
    [Fact]
    public void The_list_has_these_parts() => Assert.Equal(
        ["battery", "front-camera", "rear-camera", "external-audio-connector", "charging-port", "button", "microphone", "speaker", "hinge"],
        Device.Phone.Check().Where(finding => finding.Article == Article).Select(finding => finding.Rule["spares-to-professionals.".Length..]));

    [Theory]
    [InlineData(Audience.Public, FindingStatus.Met, "spare-on-offer")]
    [InlineData(Audience.Repairers, FindingStatus.Met, "spare-on-offer")]
    [InlineData(Audience.Authorised, FindingStatus.NotMet, "spare-audience")]
    [InlineData(Audience.Nobody, FindingStatus.NotMet, "spare-audience")]
    public void Independent_repairers_can_have_it(Audience audience, FindingStatus status, string code) => Offered(audience, 7).Says(Rule, Article, status, code);

    [Fact]
    public void An_audience_that_is_open_leaves_it_open() =>
        Offered(new OneOf<Audience>(Audience.Repairers, Audience.Authorised), 7).Says(Rule, Article, FindingStatus.Unknown, "spare-audience");

    [Fact]
    public void Seven_years_are_asked()
    {
        Offered(Audience.Public, 7).Says(Rule, Article, FindingStatus.Met, "spare-on-offer");
        Offered(Audience.Public, 6.9m).Says(Rule, Article, FindingStatus.NotMet, "spare-years");
        Offered(Audience.Public, new Quantity(6, 8)).Says(Rule, Article, FindingStatus.Unknown, "spare-years");
        Offered(Audience.Public, null).Says(Rule, Article, FindingStatus.Unknown, "spare-years");
    }

    [Fact]
    public void Fasteners_that_cannot_be_used_again_come_along()
    {
        Offered(Audience.Public, 7, new(true, []), Reuse.Removable).Says(Rule, Article, FindingStatus.Met, "spare-on-offer");
        Offered(Audience.Public, 7, new(false, ["speaker-screws"]), Reuse.Removable).Says(Rule, Article, FindingStatus.Met, "spare-on-offer");
        Offered(Audience.Public, 7, new(false, []), Reuse.Removable).Says(Rule, Article, FindingStatus.NotMet, "fasteners-not-supplied");
        Offered(Audience.Public, 7, null, Reuse.Removable).Says(Rule, Article, FindingStatus.Unknown, "fasteners-unknown");
    }

    [Fact]
    public void Without_a_known_way_the_fasteners_are_not_known() =>
        Device.Phone.Part("speaker").Spare("speaker", Audience.Public, spare => spare with { Years = 7 }).Says(Rule, Article, FindingStatus.Unknown, "way-unknown");

    [Fact]
    public void A_spare_that_is_not_listed_is_unknown()
    {
        Device.Phone.Held("speaker").Says(Rule, Article, FindingStatus.Unknown, "spare-not-listed");
        Device.Phone.Held("speaker").Held("battery").Spare("battery").Says(Rule, Article, FindingStatus.Unknown, "spare-not-listed");
    }

    [Fact]
    public void An_empty_list_says_that_there_is_none() =>
        Device.Phone.Held("speaker").With(record => record with { Spares = [] }).Says(Rule, Article, FindingStatus.NotMet, "no-spares");

    [Fact]
    public void The_best_of_several_spares_counts() =>
        Offered(Audience.Authorised, 7).Spare("speaker", Audience.Repairers, spare => spare with { Years = 7 }).Says(Rule, Article, FindingStatus.Met, "spare-on-offer");

    [Fact]
    public void All_parts_of_a_role_need_a_spare()
    {
        var finding = Offered(Audience.Public, 7).Part("second", "speaker").Find(Rule);
        Assert.Equal((FindingStatus.Unknown, "spare-not-listed", "The record does not say whether there is a spare for second."), (finding.Status, finding.Why.Code, finding.Why.Text));
    }

    [Fact]
    public void A_part_that_the_device_does_not_have_is_not_asked_for()
    {
        Device.Phone.Absent("speaker").Says(Rule, Article, FindingStatus.NotApplicable, "part-absent");
        Device.Phone.Says(Rule, Article, FindingStatus.Unknown, "part-not-recorded");
    }

    [Fact]
    public void A_hinge_is_asked_for_in_a_device_that_folds()
    {
        Device.Phone.Says("spares-to-professionals.hinge", Article, FindingStatus.NotApplicable, "not-foldable");
        Device.Phone.Device(device => device with { Foldable = true }).Says("spares-to-professionals.hinge", Article, FindingStatus.Unknown, "part-not-recorded");
    }
}
