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
        return new()
        {
            Choices = set is not null ? [new(set, null)] : choices.IsDefault ? [] : choices,
            Aggregate = aggregate,
            Instances = over.Word<InstancePolicy>("instances"),
            Absent = over.Word<AbsentPolicy>("absent"),
        };
    }

    SetChoice Choice(ObjectReader choice) => new(
        SetOf(choice.Text("set"), choice.Pointer.Child("set")),
        choice.Object("when", Condition));

    SetCondition Condition(ObjectReader when)
    {
        var condition = new SetCondition(when.SlugOrNull("present"), when.FlagOrNull("foldable"));
        if (condition.Present is null == condition.Foldable is null)
            binding.Error(when.Pointer, "condition-form", "A condition has either 'present' or 'foldable'.", "Keep one of them.");
        return condition;
    }

    PartSet SetOf(string name, Pointer at)
    {
        if (binding.PartSets.TryGetValue(name, out var set)) return set;
        if (name.Length > 0)
            binding.Error(at, "part-set-unknown", "There is no set of parts '{name}'.", Suggestion.Hint(name, binding.PartSets.Keys), ("name", name));
        return new(name, []);
    }
}
