namespace FixScore.Tests.Reading.Profiles;

public sealed class ExtendsTests
{
    // Digest of the control profile's canonical form, written out by Python's json (sorted names, no spaces) and hashed by its hashlib.
    const string ControlDigest = "sha256:17f9fcc2a3e5d613390862244cba2d9d4144a1c0b10d109cffb975d3dcf12703";

    const string Heavier = """
        { "format": "fixscore-profile/1", "id": "heavier", "version": "1.1.0", "title": "Heavier",
          "extends": { "id": "corpus.control", "version": "1.0.0" }, "nodes": { "glue": { "weight": 3 } } }
        """;

    [Fact]
    public void A_profile_alone_has_the_digest_of_its_text() => Assert.Equal(ControlDigest, Texts.ProfileOf(Texts.Profile).OrThrow().Digest);

    [Fact]
    public void A_patch_keeps_what_it_does_not_name()
    {
        var profile = Texts.ProfileOf(Heavier, Texts.Profile).OrThrow();
        Assert.Equal(("heavier", "1.1.0", "Heavier", ProfileStatus.Own, 10m), (profile.Id, profile.Version, profile.Title, profile.Status, profile.Scale.Max));
        Assert.Equal([1m, 3m], ((GroupNode)profile.Root).Of.Select(node => node.Weight));
    }

    [Fact]
    public void Bases_are_named_nearest_first_with_the_digests_of_their_resolved_forms()
    {
        var profile = Texts.ProfileOf(Extending("top", "heavier", "1.1.0"), Heavier, Texts.Profile).OrThrow();
        Assert.Equal(["heavier@1.1.0", "corpus.control@1.0.0"], profile.Bases.Select(each => $"{each.Id}@{each.Version}"));
        Assert.Equal(ControlDigest, profile.Bases[1].Digest);
        Assert.Equal(Texts.ProfileOf(Heavier, Texts.Profile).OrThrow().Digest, profile.Bases[0].Digest);
    }

    [Fact]
    public void A_resolved_profile_has_the_digest_of_the_same_profile_written_out()
    {
        var written = Texts.Merged(Texts.Profile, """{ "id": "heavier", "version": "1.1.0", "title": "Heavier" }""").Replace("\"weight\":2", "\"weight\":3", StringComparison.Ordinal);
        Assert.Equal(Texts.ProfileOf(written).OrThrow().Digest, Texts.ProfileOf(Heavier, Texts.Profile).OrThrow().Digest);
    }

    [Fact]
    public void A_base_with_the_digest_asked_for_is_taken() =>
        Assert.True(Texts.ProfileOf(Extending("top", "corpus.control", "1.0.0", ControlDigest), Texts.Profile).IsValid);

    [Fact]
    public void A_base_with_another_digest_is_not() => Assert.Equal(
        ["base-changed /extends/digest"],
        Texts.ProfileOf(Extending("top", "corpus.control", "1.0.0", ControlDigest), Texts.Profile.Replace("\"max\": 10", "\"max\": 20", StringComparison.Ordinal)).Told());

    [Fact]
    public void A_circle_of_bases_is_told_with_its_way()
    {
        var result = Texts.ProfileOf(Extending("a", "b", "1.0.0"), Extending("b", "c", "1.0.0"), Extending("c", "a", "1.0.0"));
        Assert.Equal(["extends-itself /extends"], result.Told());
        Assert.Contains("a@1.0.0 extends b@1.0.0 extends c@1.0.0 extends a@1.0.0", result.Problems[0].Problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_without_end_is_refused() => Assert.Equal(
        ["extends-too-long /extends"],
        Texts.ProfileOf(Extending("p0", "p1", "1.0.0"), [.. Enumerable.Range(1, 100).Select(i => Extending($"p{i}", $"p{i + 1}", "1.0.0"))]).Told());

    [Theory]
    [InlineData(32, true)]
    [InlineData(33, false)]
    public void As_many_as_32_bases_are_taken(int bases, bool taken)
    {
        var chain = Enumerable.Range(1, bases - 1).Select(i => i == bases - 1 ? Extending($"p{i}", "corpus.control", "1.0.0") : Extending($"p{i}", $"p{i + 1}", "1.0.0"));
        Assert.Equal(taken, Texts.ProfileOf(Extending("p0", "p1", "1.0.0"), [.. chain, Texts.Profile]).IsValid);
    }

    [Fact]
    public void What_is_too_long_says_the_most() => Assert.EndsWith("More than 32 profiles extend each other.",
        Texts.ProfileOf(Extending("p0", "p1", "1.0.0"), [.. Enumerable.Range(1, 100).Select(i => Extending($"p{i}", $"p{i + 1}", "1.0.0"))]).Problems[0].Problem.Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("[]")]
    [InlineData("1")]
    public void Patches_of_nodes_are_an_object(string nodes)
    {
        var result = Texts.ProfileOf(Heavier.Replace("""{ "glue": { "weight": 3 } }""", nodes, StringComparison.Ordinal), Texts.Profile);
        Assert.Equal(["wrong-type /nodes"], result.Told());
        Assert.Equal(("Here an object is asked.", true), (result.Problems[0].Problem.Message, result.Problems[0].Problem.Hint.Length > 0));
    }

    [Theory]
    [InlineData("sha1:17f9fcc2a3e5d613390862244cba2d9d4144a1c0b10d109cffb975d3dcf127")]
    [InlineData("sha256:17f9fcc2")]
    [InlineData("sha256:g7f9fcc2a3e5d613390862244cba2d9d4144a1c0b10d109cffb975d3dcf12703")]
    [InlineData("sha256:1gf9fcc2a3e5d613390862244cba2d9d4144a1c0b10d109cffb975d3dcf12703")]
    public void A_digest_of_a_base_has_its_form(string digest) => Assert.Equal(
        ["wrong-text /extends/digest"], Texts.ProfileOf(Extending("top", "corpus.control", "1.0.0", digest), Texts.Profile).Told());

    [Fact]
    public void A_profile_is_an_object() => Assert.Equal(["wrong-type"], Texts.ProfileOf("[]").Told());

    [Fact]
    public void A_fault_of_the_base_is_told_at_extends_with_its_place()
    {
        var result = Texts.ProfileOf(Heavier, Texts.Profile.Replace("fastener-diversity", "acme.nothing", StringComparison.Ordinal));
        Assert.Equal(["criterion-not-installed /extends"], result.Told());
        Assert.EndsWith("In the resolved profile it stands at /root/of/0/criterion.", result.Problems[0].Problem.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_base_that_is_no_JSON_is_told_at_extends() => Assert.Equal(
        ["json.syntax /extends"],
        ProfileFile.Read(System.Text.Encoding.UTF8.GetBytes(Heavier), Criteria.FakePlugin.Catalogue, new Broken()).Told());

    [Fact]
    public void Patches_that_pile_up_more_than_64_levels_are_refused()
    {
        var deep = string.Concat(Enumerable.Repeat("""{"x":""", 50)) + "1" + new string('}', 50);
        var nested = string.Concat(Enumerable.Repeat("""{"id":"n","aggregate":"minimum","of":[""", 9)) + """{"id":"inmost"}""" + string.Concat(Enumerable.Repeat("]}", 9));
        var result = Texts.ProfileOf($$"""
            { "format": "fixscore-profile/1", "id": "deep", "version": "1.0.0", "extends": { "id": "corpus.control", "version": "1.0.0" },
              "root": {{nested}}, "nodes": { "inmost": { "options": {{deep}} } } }
            """, Texts.Profile);
        Assert.Equal(["json.too-deep /nodes"], result.Told());
    }

    static string Extending(string id, string baseId, string version, string? digest = null) => $$"""
        { "format": "fixscore-profile/1", "id": "{{id}}", "version": "1.0.0",
          "extends": { "id": "{{baseId}}", "version": "{{version}}"{{(digest is null ? "" : $", \"digest\": \"{digest}\"")}} } }
        """;

    sealed class Broken : IProfileSource
    {
        public ReadOnlyMemory<byte>? Find(string id, string version) => "{"u8.ToArray();
    }
}
