using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing;

/// <summary>What things of a record are called: the id, and the name that people read.</summary>
sealed class Names(TeardownRecord record)
{
    /// <summary>Where ids are folded in tables, so that two of them leave room for numbers.</summary>
    public const int FoldedAt = 12;

    const int Longest = 60;

    public string Device => $"{Short(record.Device.Maker)} {Short(record.Device.Model)} ({record.Id})";

    public string Part(string id) => record.Parts.First(part => part.Id == id).Name is { } name ? $"{id} ({Short(name)})" : id;

    public string Tool(string id) => Short(record.Tools.First(tool => tool.Id == id).Name);

    public string Consumable(string id) => Short(record.Consumables.First(consumable => consumable.Id == id).Name);

    /// <summary>A joint by its id, with how many there are of which kind.</summary>
    public static string Joint(Joint joint) => $"{joint.Id} ({Times(joint.Count)}{Plainly(joint.Kind)})";

    /// <summary>A word of a list as people write it.</summary>
    public static string Plainly<T>(T word) where T : struct, Enum => Word.Of(word).Replace('-', ' ');

    /// <summary>Parts and joints by their ids, whichever they are.</summary>
    public string Things(IEnumerable<string> ids) => string.Join(", ", ids.Select(id => record.Parts.Any(part => part.Id == id) ? Part(id) : id));

    static string Times(Quantity count) => count switch
    {
        { IsExact: true } => count == 1 ? "" : $"{count} x ",
        { Min: { } min, Max: { } max } => string.Create(CultureInfo.InvariantCulture, $"{min:0} to {max:0} x "),
        _ => "several x ",
    };

    static string Short(string name) => Plain.Text(name, Longest);
}
