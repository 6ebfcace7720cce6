using System.Text.Json.Nodes;
using FixScore.Numbers;
using FixScore.Reading.Profiles;

namespace FixScore;

/// <summary>Describes an option as the reader takes it. One method for each kind.</summary>
static class OptionSchema
{
    public static JsonObject Of(Option option)
    {
        var (schema, @default) = Kind(option);
        schema["description"] = string.Join(" ", ((string?[])[option.Text, option.Unit is { } unit ? $"Unit: {unit}." : null, $"Left out: {@default}."]).OfType<string>());
        return schema;
    }

    static (JsonObject Schema, string Default) Kind(Option option) => option switch
    {
        NumberOption number => Number(number),
        CountOption count => Count(count),
        FlagOption flag => (new() { ["type"] = "boolean", ["default"] = flag.Default }, flag.Default ? "true" : "false"),
        IChoiceOption choice => Choice(choice, choice.WordOf(option.DefaultOn(Share))),
        BandsOption bands => (new() { ["$ref"] = "#/$defs/bands" }, Shown(bands.Default)),
        LevelsOption levels => Levels(levels),
        WordsOption words => (new() { ["$ref"] = "#/$defs/slugs", ["default"] = Texts(words.Default) }, words.Default.IsEmpty ? "none" : string.Join(", ", words.Default)),
        _ => throw new InvalidOperationException($"Options of kind {option.GetType().Name} are not known."),
    };

    static Scale Share { get; } = new(0, 1);

    static (JsonObject, string) Number(NumberOption option) => (new()
    {
        ["$ref"] = "#/$defs/number",
        ["minimum"] = Decimals.Trim(option.Min),
        ["maximum"] = Decimals.Trim(option.Max),
        ["default"] = Decimals.Trim(option.Default),
    }, PlainText.Of(option.Default));

    static (JsonObject, string) Count(CountOption option) => (new()
    {
        ["type"] = "integer",
        ["minimum"] = option.Min,
        ["maximum"] = option.Max,
        ["default"] = option.Default,
    }, PlainText.Of(option.Default));

    static (JsonObject, string) Choice(IChoiceOption option, string word) => (new() { ["enum"] = Texts(option.Words), ["default"] = word }, word);

    static (JsonObject, string) Levels(LevelsOption option) => (new()
    {
        ["type"] = "object",
        ["additionalProperties"] = false,
        ["properties"] = new JsonObject(option.Words.Select(word => KeyValuePair.Create<string, JsonNode?>(word, new JsonObject { ["$ref"] = "#/$defs/number" }))),
    }, Shares(option.Default.Entries.Select(level => $"{level.Word} gives {PlainText.Of(level.Points)}")));

    static string Shown(Bands bands) => Shares(bands.Entries.Select(band => $"{BandForms.MemberOf(bands.Form)} {PlainText.Of(band.Limit)} gives {PlainText.Of(band.Points)}"));

    // The scale is the profile's, so a default has no points, only shares of it.
    static string Shares(IEnumerable<string> each) => $"in shares of the scale, {string.Join(", ", each)}";

    static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => JsonValue.Create(text))]);
}
