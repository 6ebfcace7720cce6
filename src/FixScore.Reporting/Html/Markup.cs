using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace FixScore.Reporting.Html;

/// <summary>HTML that is escaped already. Text becomes markup only by being escaped, so that a part may be named anything.</summary>
readonly record struct Markup(string Html)
{
    static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    public static Markup Nothing => new("");

    public static implicit operator Markup(string text) => new(Encoder.Encode(Cleaned(text)));

    public static Markup Join(params IEnumerable<Markup> parts) => new(string.Concat(parts.Select(part => part.Html)));

    /// <summary>An element. Attribute values are escaped; content is markup or text.</summary>
    public static Markup Element(string name, IEnumerable<(string Name, string Value)> attributes, params IEnumerable<Markup> content)
    {
        var html = new StringBuilder("<").Append(name);
        foreach (var (attribute, value) in attributes)
            html.Append(' ').Append(attribute).Append("=\"").Append(Encoder.Encode(Cleaned(value))).Append('"');
        html.Append('>');
        foreach (var part in content) html.Append(part.Html);
        return new(html.Append("</").Append(name).Append('>').Append(IsBlock(name) ? "\n" : "").ToString());
    }

    public static Markup Element(string name, params IEnumerable<Markup> content) => Element(name, [], content);

    public static Markup Classed(string name, string cssClass, params IEnumerable<Markup> content) => Element(name, [("class", cssClass)], content);

    /// <summary>A list of items; nothing when there are none.</summary>
    public static Markup List(IEnumerable<Markup> items)
    {
        Markup[] all = [.. items.Select(item => Element("li", [item]))];
        return all.Length == 0 ? Nothing : Element("ul", all);
    }

    // A line for each block, so that two pages can be compared.
    static bool IsBlock(string name) => name is "p" or "li" or "tr" or "h1" or "h2" or "h3" or "ul" or "table" or "section" or "svg" or "figure" or "figcaption" or "details" or "div" or "header";

    // Control characters are not allowed in HTML, and marks and overrides of direction would let a record reorder the page around it.
    static string Cleaned(string text) => text.Any(IsUnwanted) ? string.Concat(text.Select(letter => IsUnwanted(letter) ? '\uFFFD' : letter)) : text;

    static bool IsUnwanted(char letter) =>
        char.IsControl(letter) && letter is not ('\n' or '\t')
        || letter is '\u061C' or '\u200E' or '\u200F' or >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';
}
