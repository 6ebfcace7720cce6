using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class ContextsTests
{
    static readonly Option<int> Limit = Options.Count("limit", 3, 0, 9, "1", "How many are too many.");

    static readonly Stub Device = Stub.With(info => info with { Options = [Limit] });

    [Fact]
    public void What_is_left_out_keeps_defaults_on_a_scale_to_a_hundred()
    {
        var context = Contexts.For(Device, new RecordBuilder().ToCase());

        Assert.Equal(new Scale(0, 100), context.Scale);
        Assert.Equal(3, context.Get(Limit));
    }

    [Fact]
    public void Options_named_replace_defaults() =>
        Assert.Equal(7, Contexts.For(Device, new RecordBuilder().ToCase(), new Scale(1, 5), (Limit, 7)).Get(Limit));

    [Fact]
    public void An_option_that_was_not_declared_is_refused() =>
        Assert.Throws<ArgumentException>(() => Contexts.For(Stub.Good, new RecordBuilder().ToCase(), null, (Limit, 7)));

    [Fact]
    public void A_part_is_judged_among_all_roles_of_the_record_unless_roles_are_stated()
    {
        var source = new RecordBuilder().Part("a", "speaker").Part("b", "battery").Part("c", "speaker").ToCase();

        Assert.Equal("speaker battery", string.Join(' ', Contexts.For(PartStub.Good, source, "b").Roles));
        Assert.Equal("button", string.Join(' ', Contexts.For(PartStub.Good, source, "b", ["button"]).Roles));
        Assert.Same(source.Record.Parts[1], Contexts.For(PartStub.Good, source, "b").Part);
    }

    [Fact]
    public void A_part_the_record_lacks_is_refused() =>
        Assert.Throws<ArgumentException>(() => Contexts.For(PartStub.Good, new RecordBuilder().ToCase(), Roles.Battery));
}
