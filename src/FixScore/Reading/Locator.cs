using System.Collections.Immutable;
using System.Text;
using System.Text.Json;

namespace FixScore.Reading;

/// <summary>Finds lines and columns for pointers in a second pass over the text, so that good files never pay for it.</summary>
static class Locator
{
    // Problems that are about a member's name rather than its value.
    static readonly string[] AboutNames = ["unknown-member", "duplicate-member"];

    public static ImmutableArray<LocatedProblem> Locate(ReadOnlyMemory<byte> text, IEnumerable<Problem> problems)
    {
        var wanted = problems.ToArray();
        var root = new PlaceTree();
        foreach (var problem in wanted) root.Add(problem.At);
        root.Fill(text.Span);
        var lines = new LineWalk(text);
        return [.. wanted
            .Select(problem => (Problem: problem, Place: PlaceOf(problem, root.Find(problem.At))))
            .OrderBy(pair => pair.Place.Offset)
            .Select(pair => lines.Locate(pair.Problem, pair.Place))];
    }

    public static ImmutableArray<LocatedProblem> At(ReadOnlyMemory<byte> text, Problem problem, int offset) =>
        [new LineWalk(text).Locate(problem, (offset, 1))];

    static (int Offset, int Length) PlaceOf(Problem problem, PlaceTree found) =>
        Array.IndexOf(AboutNames, problem.Code) >= 0 ? found.Name : found.Value;
}

/// <summary>Turns byte offsets into lines and columns. They must rise: the text is walked through once, however many problems it has.</summary>
sealed class LineWalk(ReadOnlyMemory<byte> text)
{
    const int Longest = 160;

    int offset;
    int line = 1;
    int lineStart;
    int column = 1;

    public LocatedProblem Locate(Problem problem, (int Offset, int Length) place)
    {
        MoveTo(place.Offset);
        var length = Chars(text.Span.Slice(offset, Math.Min(place.Length, text.Length - offset)));
        return new(problem, line, column, Shown(), Math.Max(1, length));
    }

    void MoveTo(int to)
    {
        var between = text.Span[offset..to];
        var lastBreak = between.LastIndexOf((byte)'\n');
        if (lastBreak >= 0)
        {
            line += between.Count((byte)'\n');
            (lineStart, column) = (offset + lastBreak + 1, 1);
            between = between[(lastBreak + 1)..];
        }
        column += Chars(between);
        offset = to;
    }

    // No character takes more than four bytes.
    string Shown()
    {
        var rest = text.Span.Slice(lineStart, Math.Min(4 * Longest, text.Length - lineStart));
        if (rest.IndexOf((byte)'\n') is >= 0 and var end) rest = rest[..end];
        var shown = Encoding.UTF8.GetString(rest).TrimEnd('\r');
        if (shown.Length <= Longest) return shown;
        return shown[..(char.IsHighSurrogate(shown[Longest - 1]) ? Longest - 1 : Longest)];
    }

    static int Chars(ReadOnlySpan<byte> bytes) => Encoding.UTF8.GetCharCount(bytes);
}

/// <summary>The pointers wanted, as a tree; one pass over the text fills in where they stand.</summary>
sealed class PlaceTree
{
    readonly Dictionary<string, PlaceTree> children = new(StringComparer.Ordinal);

    public (int Offset, int Length) Name { get; private set; }

    public (int Offset, int Length) Value { get; private set; }

    bool Found { get; set; }

    public void Add(Pointer pointer)
    {
        var node = this;
        foreach (var step in Steps(pointer))
        {
            if (!node.children.TryGetValue(step, out var child)) node.children.Add(step, child = new());
            node = child;
        }
    }

    /// <summary>The place of a pointer, or of the nearest thing around it that the text has.</summary>
    public PlaceTree Find(Pointer pointer)
    {
        var node = this;
        foreach (var step in Steps(pointer))
        {
            if (!node.children.TryGetValue(step, out var child) || !child.Found) break;
            node = child;
        }
        return node;
    }

    public void Fill(ReadOnlySpan<byte> text)
    {
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = JsonText.MaxDepth });
        if (reader.Read()) Fill(ref reader, null);
    }

    void Fill(ref Utf8JsonReader reader, (int, int)? name)
    {
        Value = ((int)reader.TokenStartIndex, TokenLength(ref reader));
        Name = name ?? Value;
        Found = true;
        if (children.Count == 0) reader.Skip();
        else if (reader.TokenType == JsonTokenType.StartObject) FillMembers(ref reader);
        else if (reader.TokenType == JsonTokenType.StartArray) FillElements(ref reader);
    }

    void FillMembers(ref Utf8JsonReader reader)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = ((int)reader.TokenStartIndex, TokenLength(ref reader));
            var child = children.GetValueOrDefault(reader.GetString()!);
            reader.Read();
            if (child is null) reader.Skip();
            else child.Fill(ref reader, name);
        }
    }

    void FillElements(ref Utf8JsonReader reader)
    {
        for (var index = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; index++)
        {
            if (children.TryGetValue(index.ToString(System.Globalization.CultureInfo.InvariantCulture), out var child)) child.Fill(ref reader, null);
            else reader.Skip();
        }
    }

    static int TokenLength(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject or JsonTokenType.StartArray => 1,
        JsonTokenType.PropertyName or JsonTokenType.String => reader.ValueSpan.Length + 2,
        _ => reader.ValueSpan.Length,
    };

    static IEnumerable<string> Steps(Pointer pointer) => pointer.Text.Split('/').Skip(1)
        .Select(step => step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal));
}
