using FixScore.Criteria.Time;

namespace FixScore.Criteria.Tests.Time;

/// <summary>The table of index values: each with its standing, each sequence made of indices that the table has.</summary>
public sealed class Basic_most_data
{
    static readonly string[] Standings = ["read", "secondary", "memory", "own"];

    static IEnumerable<WorkRow> Rows => [.. BasicMost.Joints, .. BasicMost.Actions, .. BasicMost.Handling];

    [Fact]
    public void Every_joint_kind_and_every_action_has_a_row()
    {
        Assert.All(Enum.GetValues<JointKind>(), kind => Assert.Equal(Word.Of(kind), BasicMost.Of(OperationAction.Other, kind).Word));
        Assert.All(Enum.GetValues<OperationAction>(), action => Assert.Equal(Word.Of(action), BasicMost.Of(action).Word));
    }

    [Fact]
    public void No_row_stands_for_a_word_that_records_do_not_have()
    {
        Assert.All(BasicMost.Joints, row => Assert.True(Word.TryParse<JointKind>(row.Word, out _)));
        Assert.All(BasicMost.Actions, row => Assert.True(Word.TryParse<OperationAction>(row.Word, out _)));
        Assert.All(BasicMost.Joints.Where(row => row.Action is not null), row => Assert.True(Word.TryParse<OperationAction>(row.Action, out _)));
        Assert.Distinct(BasicMost.Joints.Select(row => (row.Word, row.Action)));
    }

    [Fact]
    public void Every_value_has_a_standing()
    {
        Assert.All(BasicMost.Indices, index => Assert.Contains(index.Standing, Standings));
        Assert.All(Rows, row => Assert.Equal("own", row.Standing));
        Assert.NotEmpty(BasicMost.Source);
        Assert.Equal("1", BasicMost.Version);
    }

    // The values of F and L, of G and P, and the upper ones of B, M and I could not be checked against the original card.
    [Theory]
    [InlineData('L', 10)]
    [InlineData('F', 54)]
    [InlineData('G', 3)]
    [InlineData('P', 6)]
    [InlineData('B', 16)]
    public void What_was_not_checked_says_so(char parameter, int index) =>
        Assert.Equal("memory", BasicMost.Indices.Single(each => each.Parameter == parameter && each.Index == index).Standing);

    [Fact]
    public void Every_sequence_is_made_of_indices_of_the_table()
    {
        var known = BasicMost.Indices.Select(index => (index.Parameter, index.Index)).ToHashSet();
        Assert.All(Rows.SelectMany(row => row.Sequence.Steps).Where(step => step.Index > 0 && step.Parameter != 'X'), step => Assert.Contains(step, known));
        // BasicMOST: general move, controlled move, tool use.
        Assert.All(Rows, row => Assert.Contains(new string([.. row.Sequence.Steps.Select(step => step.Parameter)]), (string[])["ABGABPA", "ABGMXIA", "ABGABPLABPA"]));
    }
}
