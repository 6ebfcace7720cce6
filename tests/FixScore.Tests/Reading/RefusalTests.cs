using System.Text;

namespace FixScore.Tests.Reading;

/// <summary>Texts made to exhaust a reader are refused in time and memory that do not depend on what they hold.</summary>
public sealed class RefusalTests
{
    const int Mebi = 1 << 20;

    [Fact]
    public void A_text_of_65_MiB_is_refused_unread()
    {
        var text = new byte[65 * Mebi];
        text.AsSpan().Fill((byte)'[');
        AssertRefused(text, "json.too-large");
    }

    [Fact]
    public void A_text_of_64_MiB_is_read()
    {
        var text = new byte[64 * Mebi];
        text.AsSpan().Fill((byte)' ');
        Encoding.UTF8.GetBytes(Texts.Tiny).CopyTo(text, 0);
        Assert.True(RecordFile.Read(text).IsValid);
    }

    [Fact]
    public void A_file_of_65_MiB_is_refused_unread()
    {
        var path = Path.GetTempFileName();
        try
        {
            using (var file = File.OpenWrite(path)) file.SetLength(65L * Mebi);
            var failure = Assert.Throws<InvalidDocumentException>(() => RecordFile.Load(path));
            Assert.Equal("json.too-large", failure.Problems[0].Problem.Code);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{\"a\":")]
    public void A_nesting_of_100000_is_refused(string open) =>
        AssertRefused(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(open, 100_000))), "json.too-deep");

    // Around the conditions are four levels, and each allOf makes two.
    [Theory]
    [InlineData(30, true)]
    [InlineData(31, false)]
    public void A_nesting_of_64_is_the_deepest_read(int pairs, bool isRead)
    {
        var condition = string.Concat(Enumerable.Repeat("""{"allOf":[""", pairs)) + "\"unplug\"" + string.Concat(Enumerable.Repeat("]}", pairs));
        var result = Texts.Record(Texts.Bench.Replace("""[{ "id": "ready", "when": [""", $$"""[{ "id": "ready", "when": [{{condition}}, """, StringComparison.Ordinal));
        Assert.Equal(isRead, result.IsValid);
    }

    [Fact]
    public void A_fault_after_the_deepest_nesting_is_no_fault_of_depth() => Assert.Equal(
        ["json.syntax"], Texts.Record(new string('[', 64) + "1" + new string(']', 64) + " x").Told());

    static void AssertRefused(byte[] text, string code)
    {
        RecordFile.Read("{"u8.ToArray());
        var before = GC.GetAllocatedBytesForCurrentThread();
        var result = RecordFile.Read(text);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal([code], result.Told());
        Assert.InRange(allocated, 0, Mebi);
    }

    [Fact]
    public void A_text_with_a_million_faults_tells_the_first_thousand()
    {
        var result = Texts.TinyWith($$"""{ "joints": [{{string.Join(",", Enumerable.Repeat("1", 1_000_000))}}] }""");
        Assert.Equal(1001, result.Problems.Length);
        Assert.Contains("too-many-problems", result.Told());
    }
}
