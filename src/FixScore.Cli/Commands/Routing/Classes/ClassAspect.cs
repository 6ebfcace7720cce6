using System.Collections.Immutable;

namespace FixScore.Cli.Commands.Routing.Classes;

/// <summary>What EN 45554 classes, and what its letters say.</summary>
/// <remarks>
/// Letters from memory of EN 45554:2020; tables A.1, A.2, A.4 and A.5 as named in Regulations (EU) 2023/1669 (Annex IVa) and
/// 2023/1670 (Annex IIIa). The standard itself was not read.
/// </remarks>
/// <param name="Name">Its member in JSON.</param>
/// <param name="Title">A word for it, for tables.</param>
/// <param name="Meaning">What it is about.</param>
/// <param name="Letters">What the letters say, from A on.</param>
sealed record ClassAspect(string Name, string Title, string Meaning, params ImmutableArray<string> Letters)
{
    public const string Source = "Letters from memory of EN 45554:2020; titles of tables A.1, A.2, A.4 and A.5 as Regulations (EU) 2023/1669 and 2023/1670 name them. The standard itself was not read.";

    public static readonly ClassAspect Fasteners = new("fasteners", "Fasteners", "fasteners and connectors, table A.1",
        "reusable, or new ones come with the spare part", "removable", "neither, or only damage frees the part");

    public static readonly ClassAspect Tools = new("tools", "Tools", "table A.2",
        "none, basic, or supplied with product or spare part", "specific to this group of products", "other tools on sale", "proprietary", "not feasible with any tool");

    public static readonly ClassAspect Environment = new("workingEnvironment", "Environment", "working environment, table A.4", "where the product is used", "workshop", "like production");

    public static readonly ClassAspect Skill = new("skill", "Skill", "skill level, table A.5", "layman", "generalist", "expert", "manufacturer or authorised by it", "not feasible with any skill");

    public static readonly ClassAspect Spares = new("spareParts", "Spares", "who can get the spare part", "the public", "independent repairers", "authorised by the manufacturer", "manufacturer only", "nobody");

    public static readonly ClassAspect Information = new("information", "Info", "who can get the disassembly instruction", [.. Spares.Letters]);

    public static readonly ImmutableArray<ClassAspect> All = [Fasteners, Tools, Environment, Skill, Spares, Information];

    /// <summary>All letters: what stays open when nothing is known.</summary>
    public LetterRange Whole => new('A', (char)('A' + Letters.Length - 1));

    /// <summary>What it is about and what its letters say, in a sentence.</summary>
    public string Legend => $"{Title} ({Meaning}): {Letterings}.";

    string Letterings => string.Join("; ", Letters.Select((text, index) => $"{(char)('A' + index)} {text}"));
}
