using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace FixScore;

/// <summary>Words of the formats as enumerations: <c>PressureSensitive</c> is written <c>pressure-sensitive</c>.</summary>
/// <remarks>The order of an enumeration's members is the order in which lists and help show them. Thread safe.</remarks>
public static class Word
{
    /// <summary>The word as written in records, profiles and score documents.</summary>
    public static string Of<T>(T value) where T : struct, Enum
    {
        var index = Array.IndexOf(Cache<T>.Values, value);
        return index < 0 ? throw new ArgumentOutOfRangeException(nameof(value)) : Cache<T>.Words[index];
    }

    /// <summary>Finds the value a word stands for; words are compared letter by letter.</summary>
    public static bool TryParse<T>([NotNullWhen(true)] string? word, out T value) where T : struct, Enum
    {
        var index = Array.IndexOf(Cache<T>.WordArray, word);
        value = index < 0 ? default : Cache<T>.Values[index];
        return index >= 0;
    }

    /// <summary>All words of a list, in the order of the enumeration.</summary>
    public static ImmutableArray<string> All<T>() where T : struct, Enum => Cache<T>.Words;

    /// <summary>What an observed word can still be: the words stated, or all of the list when nothing was observed.</summary>
    public static ImmutableArray<T> Possible<T>(this OneOf<T> word) where T : struct, Enum =>
        word.IsUnknown ? Cache<T>.All : word.Stated;

    static string Kebab(string name)
    {
        var text = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && text.Length > 0) text.Append('-');
            text.Append(char.ToLowerInvariant(letter));
        }
        return text.ToString();
    }

    static class Cache<T> where T : struct, Enum
    {
        public static readonly T[] Values = Enum.GetValues<T>();
        public static readonly string[] WordArray = [.. Enum.GetNames<T>().Select(Kebab)];
        public static readonly ImmutableArray<string> Words = [.. WordArray];
        public static readonly ImmutableArray<T> All = [.. Values];
    }
}
