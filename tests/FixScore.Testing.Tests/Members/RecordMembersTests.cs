using System.Collections;
using System.Reflection;
using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class RecordMembersTests
{
    // Notes and evidence stand on every entry and decide no score; footage gives seconds; values of observations are one member in the format.
    static readonly string[] Unlisted = ["note", "evidence", "footage"];

    [Fact]
    public void Every_member_of_the_record_model_is_listed() =>
        Assert.Empty(PathsOf(typeof(TeardownRecord), "").Except(RecordMembers.All.Select(member => member.Path)));

    [Fact]
    public void Every_member_that_can_be_unknown_is_somewhere_in_the_samples_or_generated_records()
    {
        TeardownRecord[] records = [.. SampleRecords.All, .. RecordGenerator.Many(12), new RecordBuilder().Observe("acme.latch", true).Remark("t", "t").Build()];
        var seen = records.SelectMany(record => RecordMembers.All.Where(member => member.Deletions(record).Any())).ToHashSet();

        var unseen = RecordMembers.All.Where(member => member.Delete is not null && !seen.Contains(member)).Select(member => member.Path);

        Assert.True(!unseen.Any(), string.Join(' ', unseen));
    }

    [Fact]
    public void What_was_deleted_is_gone_and_nothing_dangles()
    {
        foreach (var record in SampleRecords.All.Concat(RecordGenerator.Many(12)))
            foreach (var member in RecordMembers.All)
                foreach (var deletion in member.Deletions(record))
                {
                    Assert.Empty(RecordIds.ProblemsOf(deletion.Record));
                    Assert.True(member.Existing(deletion.Record).Length < member.Existing(record).Length, deletion.What);
                }
    }

    [Fact]
    public void Deleting_one_of_several_leaves_the_others()
    {
        var record = new RecordBuilder().Part("a").Part("b")
            .Screw("one", ["a", "b"], "slotted", 2, 4).Screw("two", ["a", "b"], "slotted", 2, 4).Build();

        var deletions = RecordMembers.Read("joints[].screw.drive")!.Deletions(record).ToArray();

        Assert.Equal(["/joints/0/screw/drive", "/joints/1/screw/drive", "joints[].screw.drive"], deletions.Select(each => each.What));
        Assert.Equal([true, false], deletions[0].Record.Joints.Select(joint => joint.Screw!.Drive.IsUnknown));
        Assert.Equal([true, true], deletions[2].Record.Joints.Select(joint => joint.Screw!.Drive.IsUnknown));
    }

    [Fact]
    public void Observations_are_deleted_by_name()
    {
        var record = new RecordBuilder().Observe("acme.latch", true).Observe("acme.gap", 2).Build();

        var deletion = Assert.Single(RecordMembers.Read("observations/acme.latch")!.Deletions(record));

        Assert.Equal(["acme.gap"], deletion.Record.Observations.Select(each => each.Name));
    }

    static IEnumerable<string> PathsOf(Type type, string path)
    {
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var name = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
            if (Unlisted.Contains(name) || type == typeof(Observation)) continue;
            var full = path.Length == 0 ? name : $"{path}.{name}";
            yield return full;
            foreach (var inner in Inside(property.PropertyType, full)) yield return inner;
        }
    }

    static IEnumerable<string> Inside(Type type, string path)
    {
        if (type.IsGenericType && type.IsAssignableTo(typeof(IEnumerable)))
            return IsObject(type.GetGenericArguments()[0]) ? PathsOf(type.GetGenericArguments()[0], $"{path}[]") : [];
        return IsObject(type) ? PathsOf(type, path) : [];
    }

    static bool IsObject(Type type) =>
        type.IsClass && type.Namespace == "FixScore.Records" && type != typeof(Condition) && type != typeof(InstalledPart) && type != typeof(FastenersIncluded);
}
