using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>Reads over which parts a node is spread.</summary>
sealed class OverReader(ProfileBinding binding)
{
    public Over Read(ObjectReader over, Scale scale)
    {
        if (over.Has("set") == over.Has("choose"))
            binding.Error(over.Pointer, "over-form", "An 'over' has either 'set' or 'choose'.", "Keep one of them.");
        var set = over.TextOrNull("set") is { } name ? SetOf(name, over.Pointer.Child("set")) : null;
        var choices = over.Objects("choose", Choice, least: 1);
        var aggregate = over.WordOrNull<Aggregate>("aggregate") ?? Aggregate.WeightedArithmetic;
        GroupCheck.AggregateFits(aggregate, scale, over.Pointer.Child("aggregate"), binding);
        over.TextOrNull("note");
        ImmutableArray<SetChoice> all = set is not null ? [new(set, null)] : choices.IsDefault ? [] : choices;
        if (aggregate == Aggregate.Sum) CheckSums(all, scale, over.Pointer);
        return new()
        {
            Choices = all,
            Aggregate = aggregate,
            Instances = over.Word<InstancePolicy>("instances"),
            Absent = over.Word<AbsentPolicy>("absent"),
        };
    }

    SetChoice Choice(ObjectReader choice)
    {
        choice.SkipRemarks();
        return new(SetOf(choice.Text("set"), choice.Pointer.Child("set")), choice.Object("when", Condition));
    }

    void CheckSums(ImmutableArray<SetChoice> choices, Scale scale, Pointer at)
    {
        foreach (var set in choices.Select(choice => choice.Set))
            GroupCheck.SumFits(set.Roles.Select(role => (role.Value, scale)), scale, at, binding);
    }

    SetCondition Condition(ObjectReader when)
    {
        var condition = new SetCondition(when.SlugOrNull("present"), when.FlagOrNull("foldable"));
        if (when.IsNotOne)
            binding.Error(when.Pointer, "condition-form", "A condition has either 'present' or 'foldable'.", "Keep one of them.");
        return condition;
    }

    PartSet SetOf(string name, Pointer at)
    {
        if (binding.PartSets.TryGetValue(name, out var set)) return set;
        if (name.Length > 0 && !binding.PartSetsUnreadable)
            binding.Error(at, "part-set-unknown", "There is no set of parts '{name}'.", Suggestion.Hint(name, binding.PartSets.Keys), ("name", name));
        return new(name, []);
    }
}
