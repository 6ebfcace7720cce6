namespace FixScore.Requirements.Tests.Batteries;

/// <summary>Regulation (EU) 2023/1542, Art. 11(1) and 11(7) (read): instructions online, spares for 5 years; that end users can buy them is from memory.</summary>
public sealed class SupplyTests
{
    static RecordBuilder Documented(OneOf<Audience> instructions, OneOf<Audience> safety, params ImmutableArray<string> parts) => Powered.Device
        .Document(DocumentSubject.DisassemblyInstructions, instructions, configure: document => document with { Parts = parts })
        .Document(DocumentSubject.SafetyData, safety);

    static void Instructed(RecordBuilder builder, FindingStatus status, string code) => builder.Says("instructions-online", "Art. 11(1)", status, code);

    [Fact]
    public void Instructions_and_safety_information_are_public()
    {
        Instructed(Documented(Audience.Public, Audience.Public), FindingStatus.Met, "documents-online");
        Instructed(Documented(Audience.Public, Audience.Public, "battery"), FindingStatus.Met, "documents-online");
        Instructed(Documented(Audience.Repairers, Audience.Public), FindingStatus.NotMet, "document-audience");
        Instructed(Documented(Audience.Public, Audience.Nobody), FindingStatus.NotMet, "document-audience");
        Instructed(Documented(Audience.Public, default), FindingStatus.Unknown, "document-audience");
        Instructed(Documented(Audience.Public, Audience.Public, "frame"), FindingStatus.Unknown, "document-of-other-parts");
    }

    [Fact]
    public void Documents_not_listed_are_unknown_and_an_empty_list_says_none()
    {
        Instructed(Powered.Device.Document(DocumentSubject.SafetyData, Audience.Public), FindingStatus.Unknown, "document-not-listed");
        Instructed(Powered.Device.With(record => record with { Documentation = [] }), FindingStatus.NotMet, "no-documents");
        Instructed(Powered.Bare.Absent("battery"), FindingStatus.NotApplicable, "no-battery");
    }

    static RecordBuilder Sold(OneOf<Audience> audience, Quantity? years) => Powered.Device.Spare("battery", audience, spare => spare with { Years = years });

    static void Spare(RecordBuilder builder, FindingStatus status, string code) => builder.Says("spare-batteries", "Art. 11(7)", status, code);

    [Fact]
    public void Spares_are_on_offer_for_five_years()
    {
        Spare(Sold(Audience.Public, 5), FindingStatus.Met, "spare-years");
        Spare(Sold(Audience.Public, 4.9m), FindingStatus.NotMet, "spare-years");
        Spare(Sold(Audience.Public, null), FindingStatus.Unknown, "spare-years");
        Spare(Sold(Audience.Repairers, 5), FindingStatus.NotMet, "spare-audience");
        Spare(Sold(default, 5), FindingStatus.Unknown, "spare-audience");
    }

    [Fact]
    public void Spares_not_listed_are_unknown_and_an_empty_list_says_none()
    {
        Spare(Powered.Device, FindingStatus.Unknown, "spare-not-listed");
        Spare(Powered.Device.With(record => record with { Spares = [] }), FindingStatus.NotMet, "no-spares");
        Spare(Powered.Bare.Absent("battery"), FindingStatus.NotApplicable, "no-battery");
    }
}
