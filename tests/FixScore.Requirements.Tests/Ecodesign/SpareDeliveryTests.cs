namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B/D 1.1(3), consolidated text of 20 June 2025 (read): 5 working days in the first five years, 10 after. Judged by the first.</summary>
public sealed class SpareDeliveryTests
{
    const string Rule = "spare-delivery.display-assembly", Article = "Annex II B 1.1(3)";

    static RecordBuilder Delivered(Quantity? days, Audience audience = Audience.Public) =>
        Device.Phone.Part("display-assembly").Spare("display-assembly", audience, spare => spare with { DeliveryDays = days });

    [Fact]
    public void Five_days_are_allowed()
    {
        Delivered(5).Says(Rule, Article, FindingStatus.Met, "spare-delivery");
        Delivered(6).Says(Rule, Article, FindingStatus.NotMet, "spare-delivery");
        Delivered(11).Says(Rule, Article, FindingStatus.NotMet, "spare-delivery");
        Delivered(new Quantity(4, 8)).Says(Rule, Article, FindingStatus.Unknown, "spare-delivery");
        Delivered(null).Says(Rule, Article, FindingStatus.Unknown, "spare-delivery");
    }

    [Fact]
    public void The_reason_says_that_the_record_has_one_number() => Assert.Equal(
        "display-assembly: delivery takes 6 working days; 5 working days are allowed in the first five years, 10 working days after; the record has one number, judged by the first.",
        Delivered(6).Find(Rule).Why.Text);

    [Fact]
    public void What_nobody_can_have_is_not_delivered() => Delivered(1, Audience.Nobody).Says(Rule, Article, FindingStatus.NotMet, "spare-audience");

    [Fact]
    public void A_part_that_is_not_there_is_not_delivered() => Device.Phone.Absent("display-assembly").Says(Rule, Article, FindingStatus.NotApplicable, "part-absent");
}
