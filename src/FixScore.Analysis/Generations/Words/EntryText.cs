using System.Text.Json;

namespace FixScore.Analysis.Generations.Words;

/// <summary>Says what a whole entry of a record is, in a few words.</summary>
static class EntryText
{
    public static string Of(string topic, JsonElement entry) => entry.ValueKind != JsonValueKind.Object ? ValueText.Of("", entry) : topic switch
    {
        "parts" => Joined(Word(entry, "role"), Word(entry, "name"), Said(entry, "on", "on {0}")),
        "joints" => Joined(JointText.Of(entry) + Said(entry, "joins", " between {0}"), Said(entry, "under", "under {0}")),
        "tools" => Joined(Word(entry, "name"), Word(entry, "class"), Said(entry, "heatC", "{0} °C"), Said(entry, "suppliedWith", "supplied with {0}")),
        "consumables" => Joined(Word(entry, "name"), Word(entry, "price")),
        "operations" => Operation(entry),
        "documentation" => Joined(Word(entry, "audience"), Word(entry, "cost"), Said(entry, "years", "{0} years"), Said(entry, "parts", "for {0}")),
        "spares" => Joined(Word(entry, "audience"), Said(entry, "years", "{0} years"), Said(entry, "deliveryDays", "delivery {0} days"), Word(entry, "price"),
            Said(entry, "onlyBundledWith", "only with {0}"), Said(entry, "fastenersIncluded", "fasteners included: {0}")),
        "locks" => Joined(Said(entry, "from", "from {0}") + Said(entry, "to", " to {0}"), Word(entry, "outcome"), Said(entry, "waitDays", "waiting {0} days"), Said(entry, "wipesData", "wipes data: {0}"),
            Said(entry, "losses", "losses: {0}")),
        _ => ValueText.Members(entry, "id", "note", "evidence"),
    };

    // What it is done to, with what, how long, at what cost.
    static string Operation(JsonElement entry) => Joined(
        Word(entry, "action"), Said(entry, "undoes", "undoes {0}"), Said(entry, "removes", "removes {0}"), Said(entry, "moves", "moves {0}"),
        Tools(entry), Said(entry, "seconds", "{0} s"), Said(entry, "consumes", "uses up {0}"), Said(entry, "damages", "damages {0}"),
        Word(entry, "phase") == "reassembly" ? "when putting together" : null);

    static string? Tools(JsonElement entry) =>
        entry.TryGetProperty("tools", out var tools) && tools.GetArrayLength() == 0 ? "with bare hands" : Said(entry, "tools", "with {0}");

    static string? Word(JsonElement entry, string member) => Said(entry, member, "{0}");

    static string? Said(JsonElement entry, string member, string words) =>
        entry.TryGetProperty(member, out var value) ? words.Replace("{0}", ValueText.Of("", value), StringComparison.Ordinal) : null;

    static string Joined(params string?[] words) => string.Join(", ", words.Where(each => !string.IsNullOrEmpty(each)));
}
