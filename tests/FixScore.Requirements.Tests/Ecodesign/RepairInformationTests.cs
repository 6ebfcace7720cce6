namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B/D 1.1(1) and 1.1(2), consolidated text of 20 June 2025 (read): what is open to whom, at what fee, for how long.</summary>
public sealed class RepairInformationTests
{
    const string Content = "Annex II B 1.1(2)(e)", Information = "Annex II B 1.1(2)";

    static readonly DocumentSubject[] Minimum = [.. Device.Phone.Check().Where(finding => finding.Article == Content)
        .Select(finding => finding.Rule["repair-information.".Length..]).Select(word => Word.TryParse<DocumentSubject>(word, out var subject) ? subject : default)];

    static RecordBuilder With(DocumentSubject subject, OneOf<Audience> audience, OneOf<DocumentCost> cost, Quantity? years, params ImmutableArray<string> parts) =>
        Device.Phone.Part("battery").Part("display-assembly").Document(subject, audience, cost, document => document with { Years = years, Parts = parts });

    // 1.1(2)(e) (read); subjects as in the record format.
    [Fact]
    public void The_minimum_content_has_these_subjects() => Assert.Equal(
        [
            "identification", "exploded-view", "wiring-diagram", "board-schematic", "tools-list", "disassembly-instructions", "error-codes", "component-list",
            "diagnostics", "software-reset", "failure-records", "repairer-registration",
        ],
        Minimum.Select(Word.Of));

    [Theory]
    [InlineData(Audience.Public, FindingStatus.Met, "document-there")]
    [InlineData(Audience.Repairers, FindingStatus.Met, "document-there")]
    [InlineData(Audience.Authorised, FindingStatus.NotMet, "document-audience")]
    [InlineData(Audience.Nobody, FindingStatus.NotMet, "document-audience")]
    public void Professionals_have_access(Audience audience, FindingStatus status, string code) =>
        With(DocumentSubject.ErrorCodes, audience, DocumentCost.Free, 7).Says("repair-information.error-codes", Content, status, code);

    [Fact]
    public void It_stays_for_seven_years()
    {
        With(DocumentSubject.ErrorCodes, Audience.Public, DocumentCost.Free, 6).Says("repair-information.error-codes", Content, FindingStatus.NotMet, "document-years");
        With(DocumentSubject.ErrorCodes, Audience.Public, DocumentCost.Free, null).Says("repair-information.error-codes", Content, FindingStatus.Unknown, "document-years");
    }

    [Fact]
    public void What_is_about_some_parts_only_leaves_the_rest_open() => With(DocumentSubject.ErrorCodes, Audience.Public, DocumentCost.Free, 7, "battery")
        .Says("repair-information.error-codes", Content, FindingStatus.Unknown, "document-of-some-parts");

    [Fact]
    public void What_is_not_listed_is_unknown_and_an_empty_list_says_none()
    {
        With(DocumentSubject.Identification, Audience.Public, DocumentCost.Free, 7).Says("repair-information.error-codes", Content, FindingStatus.Unknown, "document-not-listed");
        Device.Phone.With(record => record with { Documentation = [] }).Says("repair-information.error-codes", Content, FindingStatus.NotMet, "no-documents");
    }

    static RecordBuilder AllAt(OneOf<DocumentCost> cost) =>
        Minimum.Aggregate(Device.Phone, (device, subject) => device.Document(subject, Audience.Repairers, subject == DocumentSubject.ErrorCodes ? cost : DocumentCost.ReasonableFee));

    [Fact]
    public void A_fee_does_not_deter()
    {
        AllAt(DocumentCost.Free).Says("repair-information-fees", Information, FindingStatus.Met, "fees-reasonable");
        AllAt(DocumentCost.Fee).Says("repair-information-fees", Information, FindingStatus.NotMet, "document-cost");
        AllAt(default).Says("repair-information-fees", Information, FindingStatus.Unknown, "document-cost");
    }

    [Fact]
    public void Fees_of_documents_that_are_not_listed_are_unknown()
    {
        With(DocumentSubject.ErrorCodes, Audience.Public, DocumentCost.Free, 7).Says("repair-information-fees", Information, FindingStatus.Unknown, "document-not-listed");
        Device.Phone.Says("repair-information-fees", Information, FindingStatus.Unknown, "document-not-listed");
    }

    [Fact]
    public void Where_there_is_no_document_there_is_no_fee() =>
        Device.Phone.With(record => record with { Documentation = [] }).Says("repair-information-fees", Information, FindingStatus.NotApplicable, "none-for-professionals");

    [Fact]
    public void Instructions_for_parts_of_the_second_list_are_public_and_free()
    {
        const string rule = "repair-instructions.display-assembly";
        With(DocumentSubject.DisassemblyInstructions, Audience.Public, DocumentCost.Free, 7).Says(rule, Information, FindingStatus.Met, "document-there");
        With(DocumentSubject.DisassemblyInstructions, Audience.Public, DocumentCost.Free, 7, "display-assembly").Says(rule, Information, FindingStatus.Met, "document-there");
        With(DocumentSubject.DisassemblyInstructions, Audience.Public, DocumentCost.Free, 7, "battery").Says(rule, Information, FindingStatus.Unknown, "document-of-some-parts");
        With(DocumentSubject.DisassemblyInstructions, Audience.Repairers, DocumentCost.Free, 7).Says(rule, Information, FindingStatus.NotMet, "document-audience");
        With(DocumentSubject.DisassemblyInstructions, Audience.Public, DocumentCost.ReasonableFee, 7).Says(rule, Information, FindingStatus.NotMet, "document-cost");
        Device.Phone.Absent("display-assembly").Says(rule, Information, FindingStatus.NotApplicable, "part-absent");
    }

    [Fact]
    public void A_battery_that_lasts_is_not_on_the_second_list() => With(DocumentSubject.DisassemblyInstructions, Audience.Repairers, DocumentCost.Free, 7)
        .Lasting(83, 1000, "IP67").Says("repair-instructions.battery", Information, FindingStatus.NotApplicable, "battery-lasts");

    [Theory]
    [InlineData(Audience.Public, DocumentCost.Free, FindingStatus.Met, "document-there")]
    [InlineData(Audience.Repairers, DocumentCost.Free, FindingStatus.NotMet, "document-audience")]
    [InlineData(Audience.Public, DocumentCost.Fee, FindingStatus.NotMet, "document-cost")]
    public void The_list_of_spares_is_public_and_free(Audience audience, DocumentCost cost, FindingStatus status, string code) =>
        With(DocumentSubject.SparePartsList, audience, cost, null).Says("spare-parts-list", "Annex II B 1.1(1)", status, code);

    [Fact]
    public void A_list_of_spares_that_was_not_looked_for_is_unknown() =>
        Device.Phone.Says("spare-parts-list", "Annex II B 1.1(1)", FindingStatus.Unknown, "document-not-listed");
}
