using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FixScore.Tests.Criteria;
using FixScore.Tests.Writing;

namespace FixScore.Tests.Reading;

/// <summary>Whatever happens to a text, reading ends without an exception and with a value or an error.</summary>
public sealed class MutationTests
{
    const int Cases = 3000;

    static readonly byte[][] Records = [Encoding.UTF8.GetBytes(EveryMember.Text), Encoding.UTF8.GetBytes(Texts.Bench)];
    static readonly byte[][] Demos = [.. Texts.Demos.Take(2).Select(File.ReadAllBytes)];
    static readonly byte[] Base = Encoding.UTF8.GetBytes(Texts.Profile);
    static readonly byte[][] Profiles = [Encoding.UTF8.GetBytes(Texts.Example("profile.example.json")), Corpus.Named("profiles/control-extension.json").Bytes];

    static readonly Gen<(int Text, (int Kind, int At, int Other)[] Changes)> Changes =
        Gen.Select(Gen.Int[0, 1], Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100_000], Gen.Int[0, 100_000]).Array[1, 4]);

    [Fact]
    public void A_record_with_damaged_members_is_read_or_refused() => All(each =>
    {
        var text = JsonNode.Parse(Records[each.Text])!;
        foreach (var (kind, at, other) in each.Changes) Damage.ChangeMember(text, kind, at, other);
        AssertReadOrRefused(RecordFile.Read(Encoding.UTF8.GetBytes(text.ToJsonString())));
    });

    [Fact]
    public void A_record_with_damaged_bytes_is_read_or_refused() => All(
        each => AssertReadOrRefused(RecordFile.Read(Damaged(Records[each.Text], each.Changes))));

    [Fact]
    public void A_demo_record_with_damaged_bytes_is_read_or_refused() => All(
        each => AssertReadOrRefused(RecordFile.Read(Damaged(Demos[each.Text], each.Changes))));

    [Fact]
    public void A_profile_with_damaged_members_is_read_or_refused() => All(each =>
    {
        var text = JsonNode.Parse(Profiles[each.Text])!;
        foreach (var (kind, at, other) in each.Changes) Damage.ChangeMember(text, kind, at, other);
        AssertReadOrRefused(Read(Encoding.UTF8.GetBytes(text.ToJsonString())));
    });

    [Fact]
    public void A_profile_with_damaged_bytes_is_read_or_refused() => All(
        each => AssertReadOrRefused(Read(Damaged(Profiles[each.Text], each.Changes))));

    [Fact]
    public void What_is_left_of_a_record_is_written_as_it_was_read() => All(each =>
    {
        var text = JsonNode.Parse(Records[each.Text])!;
        foreach (var (_, at, other) in each.Changes) Damage.ChangeMember(text, 0, at, other);
        if (RecordFile.Read(Encoding.UTF8.GetBytes(text.ToJsonString())).Value is not { } read) return;
        var written = RecordFile.ToJson(read.Record);
        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(RecordFile.ToJson(RecordFile.Read(written).OrThrow().Record)));
    });

    // The same cases in every run.
    static void All(Action<(int Text, (int Kind, int At, int Other)[] Changes)> check) => Assert.All(
        Enumerable.Range(1, Cases).Select(i => Changes.Generate(new PCG((uint)i, 42), null, out _)), check);

    static ReadResult<Profile> Read(byte[] text) => ProfileFile.Read(text, FakePlugin.Catalogue, ProfileLibrary.Of([("test", Base)]));

    static void AssertReadOrRefused<T>(ReadResult<T> result) where T : class
    {
        Assert.Equal(result.IsValid, result.Problems.All(problem => problem.Problem.Severity != Severity.Error));
        Assert.All(result.Problems, problem => Assert.True(problem.Line >= 1 && problem.Column >= 1));
    }

    // Deletes, doubles, swaps or overwrites runs of bytes.
    static byte[] Damaged(byte[] text, (int Kind, int At, int Other)[] changes)
    {
        foreach (var (kind, at, other) in changes)
        {
            var (from, length) = (at % text.Length, Math.Min(other % 40, text.Length - at % text.Length));
            text = kind switch
            {
                0 => [.. text[..from], .. text[(from + length)..]],
                1 => [.. text[..(from + length)], .. text[from..]],
                2 => [.. text[..from], (byte)(other % 256), .. text[(from + 1)..]],
                _ => [.. text[..from], .. "{}[]\",:0-\\"u8.Slice(other % 10, 1), .. text[from..]],
            };
            if (text.Length == 0) return text;
        }
        return text;
    }
}
