using FixScore.Records;
using FixScore.Testing;
using static FixScore.Disassembly.FastenerLevel;

namespace FixScore.Disassembly.Tests.Levels;

/// <summary>Regulation (EU) 2023/1669 Annex I (16) to (19): reusable, resupplied with the spare part, removable.</summary>
public sealed class FastenerLevelTests
{
    static readonly FastenersIncluded All = new(true, []), None = new(false, []);

    public static TheoryData<string, Func<RecordBuilder, RecordBuilder>, FastenerLevel[]> Supplies => new()
    {
        { "spares not recorded", Same, [Resupplied, Removable] },
        { "no spares at all", record => record.With(each => each with { Spares = [] }), [Removable] },
        { "its spare says nothing of fasteners", record => record.Spare("cover", Audience.Public), [Resupplied, Removable] },
        { "its spare comes with all", record => Spare(record, "cover", All), [Resupplied] },
        { "its spare comes with none", record => Spare(record, "cover", None), [Removable] },
        { "its spare comes with this one", record => Spare(record, "cover", new(false, ["glue"])), [Resupplied] },
        { "its spare comes with another one", record => Spare(record, "cover", new(false, ["latch"])), [Removable] },
        { "the spare of a part of its group comes with all", record => Spare(record, "rim", All), [Resupplied] },
        { "the spare of another part comes with all", record => Spare(record, "board", All), [Resupplied, Removable] },
        { "two spares, one with none and one with all", record => Spare(Spare(record, "cover", None), "rim", All), [Resupplied] },
        { "two spares, one with none and one that says nothing", record => Spare(record, "cover", None).Spare("rim", Audience.Public), [Resupplied, Removable] },
        { "nobody is sold its spare", record => record.Spare("cover", Audience.Nobody, spare => spare with { FastenersIncluded = All }), [Removable] },
    };

    [Theory]
    [MemberData(nameof(Supplies), DisableDiscoveryEnumeration = true)]
    public void A_removable_fastener_is_resupplied_when_a_spare_of_the_group_brings_it(string supply, Func<RecordBuilder, RecordBuilder> supplied, FastenerLevel[] levels)
    {
        Assert.NotEmpty(supply);
        Assert.Equal(levels, Of(supplied(Slate()), "glue"));
    }

    [Fact]
    public void With_all_fasteners_only_joints_of_the_part_itself_come() =>
        Assert.Equal([Removable], Of(Spare(Slate(), "cover", All), "far"));

    [Fact]
    public void A_joint_elsewhere_comes_when_it_is_listed() =>
        Assert.Equal([Resupplied], Of(Spare(Slate(), "cover", new(true, ["far"])), "far"));

    [Theory]
    [InlineData(Reuse.Reusable, new[] { Reusable })]
    [InlineData(Reuse.Neither, new[] { Neither })]
    public void What_is_reused_or_holds_reassembly_up_needs_no_supply(Reuse reuse, FastenerLevel[] levels) =>
        Assert.Equal(levels, Of(Slate(reuse), "glue"));

    [Fact]
    public void Reuse_nobody_observed_leaves_every_level_open_best_first() =>
        Assert.Equal([Reusable, Resupplied, Removable, Neither], Of(Slate(default(OneOf<Reuse>)), "glue"));

    [Fact]
    public void A_part_that_is_not_there_is_no_part() =>
        Assert.Throws<KeyNotFoundException>(() => FastenerLevels.Of(Slate().ToCase(), "mast", new() { Id = "x", Joins = [], Kind = JointKind.Screw }));

    static RecordBuilder Same(RecordBuilder record) => record;

    static RecordBuilder Spare(RecordBuilder record, string part, FastenersIncluded included) =>
        record.Spare(part, Audience.Public, spare => spare with { FastenersIncluded = included });

    static RecordBuilder Slate() => Slate(Reuse.Removable);

    static RecordBuilder Slate(OneOf<Reuse> reuse) => new RecordBuilder().Part("cover").Part("rim").Part("board").Part("frame")
        .Joint("moulded", ["cover", "rim"], JointKind.Weld, joint => joint with { Integral = true })
        .Joint("glue", ["cover", "frame"], JointKind.Adhesive, joint => joint with { Reuse = reuse })
        .Joint("latch", ["rim", "frame"], JointKind.SnapFit)
        .Joint("far", ["board", "frame"], JointKind.Adhesive, joint => joint with { Reuse = Reuse.Removable });

    static FastenerLevel[] Of(RecordBuilder builder, string joint)
    {
        var source = builder.ToCase();
        return [.. FastenerLevels.Of(source, "cover", source.Record.Joints.Single(each => each.Id == joint)).Stated];
    }
}
