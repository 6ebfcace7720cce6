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
        Assert.Equal("part extra is new: speaker.", part.Text);
    }

    [Fact]
    public void A_role_that_looks_like_an_id_stays_a_role() =>
        Assert.Empty(RecordChanges.Between(Builder("battery", "frame").Build(), Builder("pack", "frame").Build()));

    [Fact]
    public void A_joint_that_holds_with_something_else_is_told_as_a_whole()
    {
        var old = Record("cell", "frame", "glue", AdhesiveType.CuredLiquid);
        var screws = new Joint { Id = "screws", Joins = ["cell", "frame"], Kind = JointKind.Screw, Count = 4, Screw = new("cross-h", 1.6m, 3m), Reuse = Reuse.Reusable };
        var change = Assert.Single(RecordChanges.ByEntry(old, old with { Joints = EntryList.Of(screws) }));
        Assert.Equal("cell and frame held by 4 screws (cross-h, 1.6 x 3 mm, reusable); before by cured-liquid adhesive", change.Text);
        Assert.Equal(("screws (was glue)", ChangeKind.Changed, false), (Assert.Single(change.Entries), change.Kind, change.IsMinor));
        Assert.Equal(["adhesive", "count", "kind", "reuse", "screw"], change.Changes.Select(each => each.Path.Text.Split('/')[3]));
    }

    [Fact]
    public void Entries_that_changed_alike_stand_together()
    {
        var old = Record("cell", "frame") with { Documentation = EntryList.Of(Document(DocumentSubject.ErrorCodes, 5), Document(DocumentSubject.Diagnostics, 5), Document(DocumentSubject.ExplodedView, 7)) };
        var @new = old with { Documentation = EntryList.Of(Document(DocumentSubject.ErrorCodes, 10), Document(DocumentSubject.Diagnostics, 10), Document(DocumentSubject.ExplodedView, 10)) };
        Support.Equal([("diagnostics, error-codes", "years 10 (was 5)"), ("exploded-view", "years 10 (was 7)")],
            RecordChanges.ByEntry(old, @new).Select(change => (string.Join(", ", change.Entries), change.Text)));
    }

    // What is gone keeps the ids that it had, whatever its like is called now.
    [Fact]
    public void Old_values_are_told_as_the_old_record_has_them()
    {
        var old = Record("cell", "frame") with { Operations = EntryList.Of(new Operation { Id = "cut", Action = OperationAction.CutAdhesive, Undoes = ["bond"], Damages = ["cell"] }) };
        var @new = Record("pack", "frame") with { Operations = EntryList.Of<Operation>() };
        var gone = Assert.Single(RecordChanges.Between(old, @new), change => change.Topic == "operations");
        Assert.Equal(ChangeKind.Removed, gone.Kind);
        Assert.Contains("\"damages\":[\"cell\"]", gone.Old, StringComparison.Ordinal);
        Assert.Equal("pack", Assert.Single(RecordChanges.Renamed(old, @new)).Key);
    }

    [Fact]
    public void Operations_that_bring_nothing_about_are_not_taken_for_each_other()
    {
        var (old, @new) = (Waiting("wait-for-glue"), Waiting("aim-camera"));
        Assert.Empty(RecordChanges.Renamed(old, @new));
        Support.Equal([ChangeKind.Added, ChangeKind.Removed], RecordChanges.Between(old, @new).Select(change => change.Kind));
    }

    static TeardownRecord Waiting(string id) => Record("cell", "frame") with { Operations = EntryList.Of(new Operation { Id = id, Action = OperationAction.Other }) };

    static Document Document(DocumentSubject subject, int years) => new() { Subject = subject, Years = years };

    static RecordBuilder Builder(string cell, string frame) => new RecordBuilder("r").Part("board", "mainboard").Part(cell, "battery").Part(frame, "frame");

    static TeardownRecord Record(string cell, string frame, string bond = "bond", AdhesiveType type = AdhesiveType.Structural) => Builder(cell, frame).Build() with
    {
        Joints = EntryList.Of(new Joint { Id = bond, Joins = [cell, frame], Kind = JointKind.Adhesive, Adhesive = new() { Type = type } }),
    };
}
