using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>Reads classes.</summary>
sealed class ClassReader(ProfileBinding binding, ProfileScale scale, ProfileStatus status)
{
    public ImmutableArray<ScoreClass> Classes(ObjectReader profile)
    {
        var classes = profile.Objects("classes", Class, least: 1);
        if (classes.IsDefaultOrEmpty) return [];
        var at = profile.Pointer.Child("classes");
        for (var i = 1; i < classes.Length; i++) CheckPair(classes[i - 1], classes[i], at.Child(i));
        if (classes.Select(each => each.Label).Distinct(StringComparer.Ordinal).Count() < classes.Length)
            binding.Error(at, "class-twice", "Two classes have the same label.", "Give each class a label of its own.");
        if (classes[^1].From > scale.Min)
            binding.Error(at.Child(classes.Length - 1).Child("from"), "classes-leave-a-gap", "Scores below {from} have no class.", "The lowest class begins at {min} or below.",
                ("from", classes[^1].From), ("min", scale.Min));
        return classes;
    }

    ScoreClass Class(ObjectReader each)
    {
        var label = each.Text("label");
        if (status != ProfileStatus.Law && label.Length == 1 && char.IsAsciiLetter(label[0]))
            binding.Error(each.Pointer.Child("label"), "class-letter", "Only a law may use single letters as classes.", "Use words.");
        SourcesReader.Read(each, binding);
        return new(label, each.Number("from"));
    }

    void CheckPair(ScoreClass upper, ScoreClass lower, Pointer at)
    {
        if (upper.From <= lower.From)
            binding.Error(at.Child("from"), "classes-unsorted", "'{lower}' begins at {from}, not below '{upper}'.", "Highest class first.",
                ("lower", lower.Label), ("from", lower.From), ("upper", upper.Label));
    }
}
