namespace FixScore.Testing.Tests;

public sealed class SampleRecordsTests
{
    [Fact]
    public void Samples_are_told_apart_by_id() =>
        Assert.Equal(["minimal", "everything-unknown", "glued-tablet", "screwed-modular"], SampleRecords.All.Select(record => record.Id));

    [Fact]
    public void A_sample_is_the_same_object_at_every_call() => Assert.Same(SampleRecords.GluedTablet, SampleRecords.GluedTablet);

    [Fact]
    public void The_unknown_sample_says_nothing_of_any_member_that_can_be_unknown_but_the_lists_themselves()
    {
        string[] told = ["joints", "operations", "tools", "swaps", "locks", "documentation", "spares", "support",
            "assessment.units[].source", "joints[].adhesive", "joints[].connector"];
        var open = RecordMembers.All.Where(member => member.Deletions(SampleRecords.EverythingUnknown).Any()).Select(member => member.Path);

        Assert.Empty(open.Except(told));
    }

    [Fact]
    public void Samples_can_be_taken_apart_in_the_order_of_their_operations() =>
        Assert.All(SampleRecords.All, record => Assert.Null(new Walk(record).Stuck(record.Operations, checkHeld: true)));

    [Fact]
    public void The_published_way_of_the_screwed_sample_frees_its_part()
    {
        var (record, way) = (SampleRecords.ScrewedModular, SampleRecords.ScrewedModular.Sequences[0]);
        var operations = way.Operations.Select(id => record.Operations.Single(operation => operation.Id == id)).ToArray();

        Assert.Null(new Walk(record).Stuck(operations, checkHeld: true));
        Assert.Contains(way.Part, operations[^1].Removes);
    }
}
