namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Options that take a word from a list.</summary>
static class WordOption
{
    public static Option<T> Of<T>(string name, string description) where T : struct, Enum
    {
        var option = new Option<T>(name)
        {
            Description = description, HelpName = string.Join('|', Word.All<T>()),
            CustomParser = result =>
            {
                var word = result.Tokens[0].Value;
                if (Word.TryParse(word, out T value)) return value;
                result.AddError($"'{word}' is no word for {name}. {Suggestion.Hint(word, Word.All<T>())}");
                return default;
            },
        };
        // The parser would offer the names that the list has in code.
        option.CompletionSources.Clear();
        option.CompletionSources.Add(_ => Word.All<T>().Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        return option;
    }
}
