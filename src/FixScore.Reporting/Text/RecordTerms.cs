using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>What things of a record are called; text of the record is cleaned and cut.</summary>
sealed class RecordTerms(TeardownRecord record, CultureInfo culture)
{
    public const string NotRecorded = "not recorded";

    public const int LongestName = 60;
    const int LongestSentence = 600;

    readonly Shown shown = new(culture);

    public string Device => $"{Name(record.Device.Maker)} {Name(record.Device.Model)} ({record.Id})";

    public static string Name(string text) => PlainText.Of(text, LongestName);

    public static string Sentence(string text) => PlainText.Of(text, LongestSentence);

    public string Part(string id) => record.Parts.First(part => part.Id == id).Name is { } name ? $"{id} ({Name(name)})" : id;

    public string Parts(IEnumerable<string> ids) => string.Join(", ", ids.Select(Part));

    public string Joint(Joint joint) => $"{joint.Id} ({JointWords(joint)})";

    /// <summary>How many of which kind.</summary>
    public string JointWords(Joint joint) => Times(joint.Count) + Plainly(joint.Kind);

    public string Joints(IEnumerable<string> ids) => string.Join(", ", record.Joints.Where(joint => ids.Contains(joint.Id)).Select(Joint));

    public string Tools(EntryList<string> ids) => !ids.IsRecorded ? "tools not recorded" : ids.Count == 0 ? "by hand"
        : $"with {string.Join(" and ", ids.Select(id => Name(record.Tools.First(tool => tool.Id == id).Name)))}";

    public static string Plainly<T>(T word) where T : struct, Enum => Word.Of(word).Replace('-', ' ');

    public static string Words<T>(OneOf<T> words) where T : struct, Enum => words.IsUnknown ? NotRecorded : string.Join(" or ", words.Stated.Select(Plainly));

    public static string Words(OneOf<string> words) => words.IsUnknown ? NotRecorded : string.Join(" or ", words.Stated.Select(Name));

    public string Seconds(Interval? seconds) => seconds is { } known ? $"{shown.Points(known)} s" : "time not recorded";

    public string Number(decimal number) => shown.Number(number);

    /// <summary>A quantity, open ends said in words.</summary>
    public string Amount(Quantity amount, string unit = "") => amount switch
    {
        { Min: { } min, Max: { } max } => $"{shown.Points(new Interval(min, max))}{unit}",
        { Min: { } min } => $"{shown.Number(min)}{unit} or more",
        { Max: { } max } => $"{shown.Number(max)}{unit} or less",
        _ => NotRecorded,
    };

    string Times(Quantity count) => count == 1 ? "" : $"{(count == default ? "several" : Amount(count))} x ";
}
