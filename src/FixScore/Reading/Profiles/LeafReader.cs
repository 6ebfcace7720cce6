namespace FixScore.Reading.Profiles;

/// <summary>Reads a leaf and binds it to its criterion.</summary>
sealed class LeafReader(ProfileBinding binding)
{
    static readonly Installed<ICriterion> Nothing = new(new NoCriterion(), new("", ""));

    public LeafNode Read(ObjectReader node, string id, Scale scale, Over? over)
    {
        var criterion = Find(node);
        if (criterion is not null) CheckOver(criterion.Item, over, node.Pointer);
        var info = (criterion ?? Nothing).Item.Info;
        var options = criterion is null
            ? Skipped(node)
            : node.Object("options", each => new OptionReader(binding, info, scale).Read(each));
        return new()
        {
            Id = id,
            Scale = scale,
            Criterion = criterion ?? Nothing,
            Options = options ?? OptionValues.DefaultsOf(info, scale),
            Unknown = node.WordOrNull<UnknownPolicy>("unknown") ?? UnknownPolicy.Interval,
            NotApplicable = node.WordOrNull<NotApplicablePolicy>("notApplicable") ?? NotApplicablePolicy.Skip,
        };
    }

    Installed<ICriterion>? Find(ObjectReader node)
    {
        if (node.SlugOrNull("criterion") is not { } name) return null;
        if (binding.Catalogue.TryGetCriterion(name, out var criterion)) return criterion;
        binding.Error(node.Pointer.Child("criterion"), "criterion-not-installed", "No criterion '{name}' is installed.",
            Suggestion.Hint(name, [.. binding.Catalogue.Criteria.Select(each => each.Item.Info.Id)]), ("name", name));
        return null;
    }

    void CheckOver(ICriterion criterion, Over? over, Pointer at)
    {
        if (criterion is IPartCriterion && over is null)
            binding.Error(at, "part-criterion-without-over", "'{id}' judges parts, but no 'over' says which.", "Add an 'over' here or on a group above.", ("id", criterion.Info.Id));
        if (criterion is IDeviceCriterion && over is not null)
            binding.Error(at, "device-criterion-under-over", "'{id}' judges the whole device and cannot be spread over parts.", "Move it out of the 'over'.", ("id", criterion.Info.Id));
    }

    static OptionValues? Skipped(ObjectReader node)
    {
        node.Raw("options");
        return null;
    }

    sealed class NoCriterion : ICriterion
    {
        public CriterionInfo Info { get; } = new("", 1, "", "", "", Direction.MoreIsBetter, "", [], []);
    }
}
