using FixScore.Analysis.Generations;
using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Generations;

public sealed class RecordChangesTests
{
    [Fact]
    public void A_record_is_like_itself() => Assert.Empty(RecordChanges.Between(Record("cell", "frame"), Record("cell", "frame")));

    [Fact]
    public void A_part_under_another_id_is_known_by_its_role_and_so_are_joints_that_name_it()
    {
        Assert.Empty(RecordChanges.Between(Record("cell", "frame", "bond"), Record("pack", "frame", "bond")));
        var change = Assert.Single(RecordChanges.Between(Record("cell", "frame", "bond"), Record("pack", "frame", "glue", AdhesiveType.StretchRelease)));
        Assert.Equal((ChangeKind.Changed, "bond", "/joints/0/adhesive/type"), (change.Kind, change.Was, change.At.Text));
        Assert.Equal("joint glue (was bond): adhesive type is now stretch-release, was structural.", change.Text);
    }

    [Fact]
    public void What_is_new_and_what_is_gone_is_told_in_the_words_of_the_record()
    {
        var (old, @new) = (Record("cell", "frame"), Record("cell", "frame") with { Absent = EntryList.Of("hinge") });
        Assert.Equal((ChangeKind.Added, "/absent"), (Assert.Single(RecordChanges.Between(old, @new)).Kind, RecordChanges.Between(old, @new)[0].At.Text));
        Assert.Equal(ChangeKind.Removed, Assert.Single(RecordChanges.Between(@new, old)).Kind);
        var part = Assert.Single(RecordChanges.Between(old, old with { Parts = [.. old.Parts, new Part { Id = "extra", Role = "speaker" }] }));
        Assert.Equal("part extra is new: role speaker.", part.Text);
    }

    [Fact]
    public void A_role_that_looks_like_an_id_stays_a_role() =>
        Assert.Empty(RecordChanges.Between(Builder("battery", "frame").Build(), Builder("pack", "frame").Build()));

    static RecordBuilder Builder(string cell, string frame) => new RecordBuilder("r").Part("board", "mainboard").Part(cell, "battery").Part(frame, "frame");

    static TeardownRecord Record(string cell, string frame, string bond = "bond", AdhesiveType type = AdhesiveType.Structural) => Builder(cell, frame).Build() with
    {
        Joints = EntryList.Of(new Joint { Id = bond, Joins = [cell, frame], Kind = JointKind.Adhesive, Adhesive = new() { Type = type } }),
    };
}
