using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>Reads classes.</summary>
sealed class ClassReader(ProfileBinding binding, ProfileScale scale, ProfileStatus status)
{
    readonly HashSet<string> labels = new(StringComparer.Ordinal);

    public ImmutableArray<ScoreClass> Classes(ObjectReader profile)
    {
        var classes = profile.Objects("classes", Class, least: 1);
        if (classes.IsDefaultOrEmpty) return [];
        var at = profile.Pointer.Child("classes");
        for (var i = 1; i < classes.Length; i++) CheckPair(classes[i - 1], classes[i], at.Child(i));
        var lowest = classes.Min(each => each.From);
        if (lowest > scale.Min)
            binding.Error(at.Child(classes.Length - 1).Child("from"), "classes-leave-a-gap", "Scores from {min} to {from} have no class.",
                "Let the lowest class begin where the scale does.", ("min", scale.Min), ("from", lowest));
        return classes;
    }

    ScoreClass Class(ObjectReader each)
    {
        var label = each.Matching("label", text => text.Length > 0, "a name");
        if (!labels.Add(label) && label.Length > 0)
            binding.Error(each.Pointer.Child("label"), "class-twice", "'{label}' is the label of another class.", "Give each class a label of its own.", ("label", label));
        if (status != ProfileStatus.Law && label.Length == 1 && char.IsAsciiLetter(label[0]))
            binding.Error(each.Pointer.Child("label"), "class-letter", "Only a law may use single letters as classes.", "Use words.");
        SourcesReader.Read(each, binding);
        each.SkipRemarks();
        return new(label, each.Number("from"));
    }

    void CheckPair(ScoreClass upper, ScoreClass lower, Pointer at)
    {
        if (upper.From <= lower.From)
            binding.Error(at.Child("from"), "classes-unsorted", "'{lower}' begins at {from}, not below '{upper}'.", "Highest class first.",
                ("lower", lower.Label), ("from", lower.From), ("upper", upper.Label));
    }
}
