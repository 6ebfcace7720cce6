using System.Collections.Immutable;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Blocks;

/// <summary>A piece of a report in words and data: not yet wrapped, escaped or laid out. Every form is made from the same blocks.</summary>
abstract record Block;

/// <summary>A part of a report under a heading of its own; sections within sections have smaller headings.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Blocks">What stands below it.</param>
sealed record Section(string Title, ImmutableArray<Block> Blocks) : Block
{
    /// <summary>Name for links within the page; none when empty.</summary>
    public string Anchor { get; init; } = "";

    /// <summary>What it comes to, in a few words beside the heading, for those who do not open it; none when empty.</summary>
    public string Gist { get; init; } = "";

    /// <summary>Whether a page shows it closed until asked. Paper, Markdown and text show all.</summary>
    public bool IsFolded { get; init; }
}

/// <summary>A paragraph.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Tone">How it is said.</param>
sealed record Prose(string Text, Tone Tone = Tone.Plain) : Block;

/// <summary>A list.</summary>
/// <param name="Entries">Its items; a list without items is left out.</param>
sealed record Items(ImmutableArray<Item> Entries) : Block
{
    public static Items Of(IEnumerable<string> texts, Tone tone = Tone.Plain) => new([.. texts.Select(text => new Item(text, tone))]);
}

/// <summary>An item of a list.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Tone">How it is said.</param>
/// <param name="Level">How deep it stands, from 0.</param>
sealed record Item(string Text, Tone Tone = Tone.Plain, int Level = 0)
{
    /// <summary>A word or two in front, ended by a colon; none when empty.</summary>
    public string Label { get; init; } = "";
}

/// <summary>A picture: drawn where a form can, told in words where not.</summary>
/// <param name="Svg">The drawing.</param>
/// <param name="InWords">What it shows, for those who do not see it; its own text should not be repeated.</param>
/// <param name="Caption">What stands below it.</param>
sealed record Picture(Markup Svg, string InWords, string Caption) : Block
{
    /// <summary>The same as a table, for forms without drawings; its words stand for it where there is none.</summary>
    public Grid? AsTable { get; init; }

    /// <summary>Whether what it shows is told beside it, so that forms without drawings leave it out.</summary>
    public bool IsToldBeside { get; init; }

    /// <summary>Whether it is wider than a phone and scrolls sideways there, instead of being scaled until nobody can read it.</summary>
    public bool IsWide { get; init; }
}

/// <summary>Text to be copied as it is: commands, digests.</summary>
/// <param name="Text">The text.</param>
sealed record Verbatim(string Text) : Block;

/// <summary>Documents that go with the report: a page carries them within itself, other forms name them.</summary>
/// <param name="Caption">What they are.</param>
/// <param name="Files">The documents.</param>
sealed record Attachments(string Caption, ImmutableArray<Attachment> Files) : Block;

/// <summary>A document that goes with the report.</summary>
/// <param name="Name">Name of the file.</param>
/// <param name="Json">Its content.</param>
sealed record Attachment(string Name, byte[] Json);
