using System.Collections.Immutable;
using FixScore.Numbers;
using FixScore.Records;

namespace FixScore.Scoring;

/// <summary>Walks a profile over a record and makes the rows of the score.</summary>
sealed class Evaluation(Profile profile, TeardownCase source, CancellationToken cancellation)
{
    readonly LeafJudge judge = new(source, cancellation);

    /// <summary>Criteria that failed, in the order of the rows.</summary>
    public IReadOnlyList<ScoreFault> Faults => judge.Faults;

    public Row Run()
    {
        var root = Row(profile.Root, profile.Root.Id);
        if (root.State != RowState.Counts) (root.State, root.Value) = (RowState.Counts, profile.Root.Scale.Whole);
        return root;
    }

    Row Row(ProfileNode node, string path)
    {
        if (node.Over is { } over) return Spread(node, over, path);
        return Plain(node, path, new(node.Weight, TitleOf(node), node.Carry, node.GateOnly, null, null, []));
    }

    // The node itself, for the whole device or for one part.
    Row Plain(ProfileNode node, string path, Surroundings around) =>
        node is LeafNode leaf ? judge.Row(leaf, path, around) : Group((GroupNode)node, path, around);

    Row Group(GroupNode group, string path, Surroundings around)
    {
        var row = new Row(group, path, around.Title, around.Weight, RowRule.Aggregate)
        {
            Aggregate = group.Aggregate, Role = around.Role, Carry = around.Carry, GateOnly = around.GateOnly,
        };
        foreach (var child in group.Of)
            row.Add(around.Part is null
                ? Row(child, $"{path}/{child.Id}")
                : Plain(child, $"{path}/{child.Id}", around with { Weight = child.Weight, Title = TitleOf(child), Carry = child.Carry, GateOnly = child.GateOnly }));
        Combination.Settle(row);
        return row;
    }

    Row Spread(ProfileNode node, Over over, string path)
    {
        var sets = SetsOf(over);
        if (sets.Length == 1) return Roles(node, over, sets[0], path, node.Weight, isWhole: true);
        var row = new Row(node, path, TitleOf(node), node.Weight, RowRule.Hull) { Carry = node.Carry, GateOnly = node.GateOnly, Options = OptionsOf(node) };
        foreach (var set in sets) row.Add(Roles(node, over, set, $"{path}/{set.Name}", null, isWhole: false));
        if (sets.Length > 0) Combination.Settle(row);
        else row.Value = node.Scale.Whole;
        return row;
    }

    Row Roles(ProfileNode node, Over over, PartSet set, string path, decimal? weight, bool isWhole)
    {
        var row = new Row(node, path, isWhole ? TitleOf(node) : set.Name, weight, RowRule.Aggregate)
        {
            Aggregate = over.Aggregate, Carry = node.Carry, GateOnly = isWhole && node.GateOnly, Options = isWhole ? OptionsOf(node) : null,
        };
        ImmutableArray<string> roles = [.. set.Roles.Select(role => role.Key)];
        foreach (var (role, roleWeight) in set.Roles) row.Add(Role(node, over, role, roleWeight, $"{path}/{role}", roles));
        Combination.Settle(row);
        return row;
    }

    Row Role(ProfileNode node, Over over, string role, decimal weight, string path, ImmutableArray<string> roles)
    {
        var parts = source.Record.Parts.Where(part => part.Role == role).ToArray();
        if (parts.Length == 0) return WithoutParts(node, over, role, weight, path);
        var row = new Row(node, path, role, weight, over.Instances == InstancePolicy.Lowest ? RowRule.Lowest : RowRule.Mean) { Role = role };
        foreach (var part in parts)
            row.Add(Plain(node, $"{path}/{part.Id}", new(null, part.Name ?? part.Id, null, false, role, part, roles)));
        Combination.Settle(row);
        return row;
    }

    Row WithoutParts(ProfileNode node, Over over, string role, decimal weight, string path)
    {
        if (!source.Record.Absent.Contains(role))
            return new(node, path, role, weight, RowRule.Given)
            {
                Role = role, IsKnown = false, Value = node.Scale.Whole, Missing = [new(Pointer.Root.Child("parts"), $"the part with the role '{role}', or the role in 'absent'")],
            };
        return new(node, path, role, weight, RowRule.Given)
        {
            Role = role, Value = node.Scale.Max, State = over.Absent == AbsentPolicy.Top ? RowState.Counts : RowState.SkippedAsNotApplicable,
            Reasons = [new("role-absent", [new("role", role)], $"The device has no part with the role '{role}'.", [Pointer.Root.Child("absent")], null)],
        };
    }

    // The first set whose condition holds; while a condition cannot be decided, all that may be first.
    ImmutableArray<PartSet> SetsOf(Over over)
    {
        var sets = ImmutableArray.CreateBuilder<PartSet>();
        foreach (var choice in over.Choices)
        {
            var holds = Holds(choice.When);
            if (holds != false) sets.Add(choice.Set);
            if (holds == true) break;
        }
        return sets.DrainToImmutable();
    }

    bool? Holds(SetCondition? when)
    {
        if (when is null) return true;
        if (when.Foldable is { } foldable) return source.Record.Device.Foldable == foldable;
        if (source.Record.Parts.Any(part => part.Role == when.Present)) return true;
        return source.Record.Absent.Contains(when.Present!) ? false : null;
    }

    static OptionValues? OptionsOf(ProfileNode node) => (node as LeafNode)?.Options;

    static string TitleOf(ProfileNode node) => node.Title ?? (node as LeafNode)?.Criterion.Item.Info.Title ?? node.Id;
}

/// <summary>What a row takes from around it.</summary>
/// <param name="Weight">Weight among its siblings.</param>
/// <param name="Title">Its title.</param>
/// <param name="Carry">Rounding of its value.</param>
/// <param name="GateOnly">Whether only gates look at it.</param>
/// <param name="Role">The role it stands for.</param>
/// <param name="Part">The part it stands for.</param>
/// <param name="Roles">The roles it is judged among.</param>
sealed record Surroundings(decimal? Weight, string Title, Carry? Carry, bool GateOnly, string? Role, Part? Part, ImmutableArray<string> Roles);
