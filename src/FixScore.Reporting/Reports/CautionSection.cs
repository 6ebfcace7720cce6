using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>The usual cautions for what the records say can hurt.</summary>
static class CautionSection
{
    public static Section Of(ReportInput input) =>
        new("Before anyone opens a device", [Items.Of(SafetyText.For(input.Judgements.Select(each => each.Record)))]) { Anchor = "cautions" };
}
