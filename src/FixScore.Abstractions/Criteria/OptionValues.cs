using System.Collections.Immutable;

namespace FixScore;

/// <summary>Values of a criterion's options, defaults filled in. Immutable and thread safe.</summary>
public sealed class OptionValues
{
    readonly ImmutableArray<KeyValuePair<Option, object>> values;

    OptionValues(ImmutableArray<KeyValuePair<Option, object>> values) => this.values = values;

    /// <summary>The options and their values, in the order in which the criterion declares them. Bands and levels hold points.</summary>
    public ImmutableArray<KeyValuePair<Option, object>> All => values;

    /// <summary>The defaults of a criterion on a scale.</summary>
    public static OptionValues DefaultsOf(CriterionInfo info, Scale scale) =>
        new([.. info.Options.Select(option => KeyValuePair.Create(option, option.DefaultOn(scale)))]);

    /// <summary>The same with one value replaced. Bands and levels hold points of the scale.</summary>
    /// <exception cref="ArgumentException">The option is not declared.</exception>
    public OptionValues With(Option option, object value) =>
        new(values.SetItem(IndexOf(option), KeyValuePair.Create(option, value)));

    /// <summary>The value of a declared option.</summary>
    /// <exception cref="ArgumentException">The option is not declared.</exception>
    public T Get<T>(Option<T> option) where T : notnull => (T)values[IndexOf(option)].Value;

    /// <summary>The value of an option; <c>null</c> when it is not declared.</summary>
    public object? Find(Option option)
    {
        foreach (var (key, value) in values)
            if (ReferenceEquals(key, option) || key.Name == option.Name) return value;
        return null;
    }

    int IndexOf(Option option)
    {
        for (var i = 0; i < values.Length; i++)
            if (ReferenceEquals(values[i].Key, option) || values[i].Key.Name == option.Name) return i;
        throw new ArgumentException($"The criterion does not declare the option '{option.Name}'.", nameof(option));
    }
}
