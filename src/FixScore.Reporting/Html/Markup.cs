using System.Text;
using System.Text.Encodings.Web;

namespace FixScore.Reporting.Html;

/// <summary>HTML that is escaped already. Text becomes markup only by being escaped, so that a part may be named anything.</summary>
readonly record struct Markup(string Html)
{
    public static Markup Nothing => new("");

    public static implicit operator Markup(string text) => new(HtmlEncoder.Default.Encode(Cleaned(text)));

    public static Markup Join(IEnumerable<Markup> parts) => new(string.Concat(parts.Select(part => part.Html)));

    /// <summary>An element. Attribute values are escaped; content is markup or text.</summary>
    public static Markup Element(string name, IEnumerable<(string Name, string Value)> attributes, params IEnumerable<Markup> content)
    {
        var html = new StringBuilder("<").Append(name);
        foreach (var (attribute, value) in attributes)
            html.Append(' ').Append(attribute).Append("=\"").Append(HtmlEncoder.Default.Encode(Cleaned(value))).Append('"');
        html.Append('>');
        foreach (var part in content) html.Append(part.Html);
        return new(html.Append("</").Append(name).Append('>').ToString());
    }

    public static Markup Element(string name, params IEnumerable<Markup> content) => Element(name, [], content);

    public static Markup Classed(string name, string cssClass, params IEnumerable<Markup> content) => Element(name, [("class", cssClass)], content);

    // Control characters are not allowed in HTML, and directional overrides would let a record reorder the page around it.
    static string Cleaned(string text) => text.Any(IsUnwanted) ? string.Concat(text.Select(letter => IsUnwanted(letter) ? '\uFFFD' : letter)) : text;

    static bool IsUnwanted(char letter) =>
        char.IsControl(letter) && letter is not ('\n' or '\t') || letter is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';
}
