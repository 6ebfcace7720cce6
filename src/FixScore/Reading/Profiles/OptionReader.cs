using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Reads a leaf's options after what its criterion declares. One method for each kind of option.</summary>
sealed class OptionReader(ProfileBinding binding, CriterionInfo info, Scale scale)
{
    public OptionValues Read(ObjectReader options)
    {
        var values = OptionValues.DefaultsOf(info, scale);
        foreach (var option in info.Options)
            if (Value(options, option) is { } value) values = values.With(option, value);
        return values;
    }

    object? Value(ObjectReader options, Option option) => option switch
    {
        NumberOption number => Within(options, options.NumberOrNull(option.Name), option.Name, number.Min, number.Max),
        CountOption count => Count(options, count),
        FlagOption => options.FlagOrNull(option.Name),
        IChoiceOption choice => Choice(options, option.Name, choice),
        BandsOption => Bands(options, option.Name),
        LevelsOption levels => Levels(options, levels),
        WordsOption => options.SlugList(option.Name) is { IsDefault: false } words ? words : null,
        _ => throw new InvalidOperationException($"Options of kind {option.GetType().Name} are not known."),
    };

    object? Within(ObjectReader options, decimal? value, string name, decimal min, decimal max)
    {
        if (value is null || min <= value && value <= max) return value;
        binding.Error(options.Pointer.Child(name), "out-of-range", "A number from {min} to {max} is asked.", "Correct it.", ("min", min), ("max", max));
        return null;
    }

    object? Count(ObjectReader options, CountOption count)
    {
        if (!options.Has(count.Name)) return options.NumberOrNull(count.Name);
        return options.Whole(count.Name, count.Min, count.Max);
    }

    object? Choice(ObjectReader options, string name, IChoiceOption choice)
    {
        if (options.TextOrNull(name) is not { } word) return null;
        if (choice.ValueOf(word) is { } value) return value;
        binding.Error(options.Pointer.Child(name), "unknown-word", "'{word}' is none of the words known here.", Suggestion.Hint(word, choice.Words), ("word", word));
        return null;
    }

    object? Levels(ObjectReader options, LevelsOption option)
    {
        if (!options.Has(option.Name))
        {
            options.Raw(option.Name);
            return null;
        }
        var at = options.Pointer.Child(option.Name);
        var levels = options.Map(option.Name, (value, place, reader) => Points(reader.NumberValue(value, place), place.Pointer));
        foreach (var (word, _) in levels)
            if (!option.Words.Contains(word))
                binding.Error(at.Child(word), "unknown-word", "'{word}' is none of the words known here.", Suggestion.Hint(word, option.Words), ("word", word));
        return FixScore.Levels.Of([.. levels.Select(level => new Level(level.Key, level.Value))]);
    }

    object? Bands(ObjectReader options, string name)
    {
        var at = options.Pointer.Child(name);
        var bands = options.Objects(name, Band, least: 1);
        if (bands.IsDefaultOrEmpty) return null;
        if (bands.Select(band => band.Form).Distinct().Count() > 1)
            binding.Error(at, "bands-mixed", "Bands of different forms stand in one list.", "Use atMost, atLeast or at throughout.");
        else if (bands.Select(band => band.Limit).Distinct().Count() < bands.Length)
            binding.Error(at, "bands-limit-twice", "Two bands have the same limit.", "Keep one of them.");
        else if (!IsSorted(bands))
            binding.Error(at, "bands-unsorted", "The bands are not in order.", "Rising limits; falling ones for atLeast.");
        else return FixScore.Bands.Of(bands[0].Form, [.. bands.Select(band => new Band(band.Limit, band.Points))]);
        return null;
    }

    BandText Band(ObjectReader band)
    {
        var limits = Enum.GetValues<BandForm>().Select(form => (Form: form, Limit: band.NumberOrNull(BandForms.MemberOf(form)))).ToArray();
        if (Array.FindAll(limits, each => band.Has(BandForms.MemberOf(each.Form))).Length != 1)
            binding.Error(band.Pointer, "band-form", "A band has exactly one of atMost, atLeast, at.", "Keep one.");
        band.SkipRemarks();
        var stated = Array.Find(limits, each => each.Limit is not null);
        return new(stated.Form, stated.Limit ?? 0, Points(band.NumberOrNull("points", required: true), band.Pointer.Child("points")));
    }

    decimal Points(decimal? points, Pointer at)
    {
        if (points is null || scale.Whole.Contains(points.Value)) return points ?? scale.Min;
        binding.Error(at, "points-off-scale", "{points} is not on the scale from {min} to {max}.", "Correct the points.",
            ("points", points.Value), ("min", scale.Min), ("max", scale.Max));
        return scale.Min;
    }

    static bool IsSorted(ImmutableArray<BandText> bands)
    {
        var sign = bands[0].Form == BandForm.AtLeast ? -1 : 1;
        return bands.Zip(bands.Skip(1)).All(pair => sign * pair.First.Limit < sign * pair.Second.Limit);
    }

    sealed record BandText(BandForm Form, decimal Limit, decimal Points);
}
