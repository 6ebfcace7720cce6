namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>
/// Annex II B/D 1.1(1)(c), consolidated text of 20 June 2025 (read): spares for professionals and end users; a battery may be kept for professionals
/// with 83 % after 500 cycles, 80 % after 1000 and IP67 (phones) or IP42 (tablets).
/// </summary>
public sealed class SparesToEndUsersTests
{
    const string Article = "Annex II B 1.1(1)(c)", Battery = "spares-to-end-users.battery", Cover = "spares-to-end-users.back-cover";

    static RecordBuilder Offered(RecordBuilder device, string part, Audience audience) =>
        device.Held(part).Spare(part, audience, spare => spare with { Years = 7 });

    // The list of 1.1(1)(c) (read).
    [Fact]
    public void The_list_has_these_parts() => Assert.Equal(
        ["battery", "display-assembly", "back-cover", "protective-foil", "charger", "sim-tray"],
        Device.Phone.Check().Where(finding => finding.Article == Article).Select(finding => finding.Rule["spares-to-end-users.".Length..]));

    [Theory]
    [InlineData(Audience.Public, FindingStatus.Met, "spare-on-offer")]
    [InlineData(Audience.Repairers, FindingStatus.NotMet, "spare-audience")]
    [InlineData(Audience.Nobody, FindingStatus.NotMet, "spare-audience")]
    public void End_users_can_have_it(Audience audience, FindingStatus status, string code) =>
        Offered(Device.Phone, "display-assembly", audience).Says("spares-to-end-users.display-assembly", Article, status, code);

    [Fact]
    public void What_is_not_listed_or_not_there()
    {
        Device.Phone.Held("sim-tray").Says("spares-to-end-users.sim-tray", Article, FindingStatus.Unknown, "spare-not-listed");
        Device.Phone.Absent("sim-tray").Says("spares-to-end-users.sim-tray", Article, FindingStatus.NotApplicable, "part-absent");
    }

    [Fact]
    public void A_battery_that_lasts_may_be_kept_for_professionals()
    {
        Offered(Device.Phone, "battery", Audience.Repairers).Lasting(83, 1000, "IP67").Says(Battery, Article, FindingStatus.Met, "battery-lasts");
        Offered(Device.Phone, "battery", Audience.Authorised).Lasting(83, 1000, "IP67").Says(Battery, Article, FindingStatus.NotMet, "spare-audience");
    }

    [Theory]
    [InlineData(82.9, 1000, "IP67")]
    [InlineData(83, 999, "IP67")]
    [InlineData(83, 1000, "IP66")]
    [InlineData(83, 1000, "IP57")]
    public void One_that_falls_short_in_anything_may_not(double percent, int cycles, string code) =>
        Offered(Device.Phone, "battery", Audience.Repairers).Lasting((decimal)percent, cycles, code).Says(Battery, Article, FindingStatus.NotMet, "spare-audience");

    [Theory]
    [InlineData("IP42", FindingStatus.Met)]
    [InlineData("IP41", FindingStatus.NotMet)]
    [InlineData("IP32", FindingStatus.NotMet)]
    [InlineData("IPX2", FindingStatus.Unknown)]
    public void Tablets_need_less_protection(string code, FindingStatus status) => Assert.Equal(
        status, Offered(Device.Tablet, "battery", Audience.Repairers).Lasting(83, 1000, code).Find(Battery).Status);

    [Fact]
    public void Endurance_that_was_not_recorded_leaves_it_open() =>
        Offered(Device.Phone, "battery", Audience.Repairers).Says(Battery, Article, FindingStatus.Unknown, "battery-exemption-unknown");

    [Fact]
    public void A_share_follows_from_two_capacities_in_one_unit()
    {
        // 3735 of 4500 is 83 %.
        RecordBuilder With(decimal left, string unit) => Offered(Device.Phone, "battery", Audience.Repairers).Lasting(0, 1000, "IP67").With(record => record with
        {
            Parts = [.. record.Parts.Select(part => part.Role != Roles.Battery ? part : part with
            {
                Specs =
                [
                    new() { Name = "rated-capacity", Value = 4500, Unit = "mAh" }, new() { Name = "capacity-after-500-cycles", Value = left, Unit = unit }, part.Specs[1],
                ],
            })],
        });
        With(3735, "mAh").Says(Battery, Article, FindingStatus.Met, "battery-lasts");
        With(3734, "mAh").Says(Battery, Article, FindingStatus.NotMet, "spare-audience");
        With(3.735m, "Ah").Says(Battery, Article, FindingStatus.Unknown, "battery-exemption-unknown");
    }

    static RecordBuilder Covered(bool removed) => Device.Phone.Part("back-cover").Held("battery")
        .Joint("cover-clips", ["back-cover", "frame"], JointKind.SnapFit)
        .Joint("cover-hinge", ["back-cover", "frame"], JointKind.Latch)
        .With(record => record with { Joints = [.. record.Joints.Select(joint => joint.Id == "battery-screws" ? joint with { Under = ["back-cover"] } : joint)] })
        .Operation("take-off-cover", OperationAction.Unclip, EntryList.Of<string>(), ["cover-clips", "cover-hinge"], ["back-cover"])
        .Operation("fold-cover", OperationAction.FoldAside, EntryList.Of<string>(), ["cover-clips"],
            configure: operation => removed ? operation : operation with { Moves = ["back-cover"], HoldsBy = ["cover-hinge"] });

    [Fact]
    public void A_cover_is_listed_only_where_it_must_come_off_for_the_battery()
    {
        Covered(removed: true).With(record => record with { Spares = [] }).Says(Cover, Article, FindingStatus.NotMet, "no-spares");
        Covered(removed: false).With(record => record with { Spares = [] }).Says(Cover, Article, FindingStatus.NotApplicable, "cover-stays");
    }

    [Fact]
    public void Without_a_known_way_to_the_battery_it_is_open() =>
        Device.Phone.Part("battery").Part("back-cover").With(record => record with { Spares = [] }).Says(Cover, Article, FindingStatus.Unknown, "way-unknown");

    [Fact]
    public void A_foil_is_listed_for_a_display_that_folds()
    {
        Device.Phone.Held("protective-foil").Says("spares-to-end-users.protective-foil", Article, FindingStatus.NotApplicable, "not-foldable");
        Offered(Device.Phone, "protective-foil", Audience.Public).Device(device => device with { Foldable = true })
            .Says("spares-to-end-users.protective-foil", Article, FindingStatus.Met, "spare-on-offer");
    }

    // Not owed when the device meets Article 3(4) of Directive 2014/53/EU (read), which is not in a record.
    [Fact]
    public void A_charger_is_never_found_missing()
    {
        Offered(Device.Phone, "charger", Audience.Nobody).Says("spares-to-end-users.charger", Article, FindingStatus.Unknown, "charger-standard-unknown");
        Offered(Device.Phone, "charger", Audience.Public).Says("spares-to-end-users.charger", Article, FindingStatus.Met, "spare-on-offer");
        Device.Phone.Absent("charger").Says("spares-to-end-users.charger", Article, FindingStatus.NotApplicable, "part-absent");
    }
}
