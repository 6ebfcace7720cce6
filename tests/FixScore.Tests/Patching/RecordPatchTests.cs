using FixScore.Patching;
using FixScore.Testing;

namespace FixScore.Tests.Patching;

public sealed class RecordPatchTests
{
    [Fact]
    public void A_record_is_patched_as_it_is_written()
    {
        var read = RecordPatch.Apply(SampleRecords.ScrewedModular, """[{"op":"add","path":"/support","value":{"securityUpdateYears":9}}]""");
        Assert.Equal(9, read.OrThrow().Record.Support!.SecurityUpdateYears);
        Assert.Equal(RecordDocument.Of(SampleRecords.ScrewedModular).Record.Parts.Count, read.Value!.Record.Parts.Count);
    }

    [Fact]
    public void What_comes_of_it_is_checked_like_any_record() =>
        Assert.False(RecordPatch.Apply(SampleRecords.ScrewedModular, """[{"op":"add","path":"/parts/0/on","value":"nowhere"}]""").IsValid);

    [Fact]
    public void Nothing_applied_is_the_same_record() =>
        Assert.Equal(RecordDocument.Of(SampleRecords.ScrewedModular).Digest, RecordPatch.Apply(SampleRecords.ScrewedModular).OrThrow().Digest);
}
