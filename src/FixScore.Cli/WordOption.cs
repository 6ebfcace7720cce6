namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Options that take a word from a list.</summary>
static class WordOption
{
    public static Option<T> Of<T>(string name, string description) where T : struct, Enum =>
        With<T, T>(name, description, (word, fail) => Word.TryParse(word, out T value) ? value : fail());

    /// <summary>One that may be left out and then has no word.</summary>
    public static Option<T?> Optional<T>(string name, string description) where T : struct, Enum =>
        With<T, T?>(name, description, (word, fail) => Word.TryParse(word, out T value) ? value : fail());

    static Option<TValue> With<T, TValue>(string name, string description, Func<string, Func<TValue?>, TValue?> parse) where T : struct, Enum
    {
        var option = new Option<TValue>(name)
        {
            Description = description, HelpName = string.Join('|', Word.All<T>()),
            CustomParser = result => parse(result.Tokens[0].Value, () =>
            {
                result.AddError($"'{result.Tokens[0].Value}' is no word for {name}. {Suggestion.Hint(result.Tokens[0].Value, Word.All<T>())}");
                return default;
            })!,
        };
        // The parser would offer the names that the list has in code.
        option.CompletionSources.Clear();
        option.CompletionSources.Add(_ => Word.All<T>().Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        return option;
    }
}
