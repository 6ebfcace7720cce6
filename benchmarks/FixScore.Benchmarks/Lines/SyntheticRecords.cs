using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace FixScore.Benchmarks.Lines;

/// <summary>A stream of synthetic records, a line each, made as they are read.</summary>
sealed class SyntheticRecords(int records) : Stream
{
    static readonly string Template = Shortened();

    byte[] line = [];
    int next, at;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public static byte[] Line(int number) => Encoding.UTF8.GetBytes(Template
        .Replace("@ID@", number.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
        .Replace("\"@COUNT@\"", (1 + (number % 9)).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
        .Replace("\"@PEEL@\"", (2 + (number % 13)).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal) + "\n");

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (at == line.Length)
        {
            if (next == records) return 0;
            (line, at) = (Line(next++), 0);
        }
        var taken = Math.Min(count, line.Length - at);
        line.AsSpan(at, taken).CopyTo(buffer.AsSpan(offset));
        at += taken;
        return taken;
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    static string Shortened() => new JsonObject
    {
        ["format"] = "fixscore-record/1",
        ["id"] = "synthetic-@ID@",
        ["device"] = new JsonObject { ["maker"] = "Synthetic", ["model"] = "Model @ID@", ["kind"] = "slate-tablet" },
        ["assessment"] = new JsonObject { ["assessor"] = "generator", ["date"] = "2026-01-01", ["units"] = new JsonArray(Id("unit-a"), Id("unit-b")) },
        ["parts"] = new JsonArray(Part("board", "mainboard"), Part("cell", "battery"), Part("screen", "display-assembly"), Part("cover", "back-cover"), Part("frame", "frame"), Part("camera", "rear-camera"), Part("port", "charging-port")),
        ["joints"] = new JsonArray(
            Screw("cover-screws", "cover"), Screw("board-screws", "board"), Screw("port-screws", "port"),
            new JsonObject { ["id"] = "cell-bond", ["joins"] = new JsonArray("cell", "frame"), ["kind"] = "adhesive", ["adhesive"] = new JsonObject { ["type"] = "pressure-sensitive", ["peelNPer25Mm"] = "@PEEL@", ["widthMm"] = 20 } },
            new JsonObject { ["id"] = "screen-bond", ["joins"] = new JsonArray("screen", "frame"), ["kind"] = "tape", ["adhesive"] = new JsonObject { ["type"] = "foam", ["peelNPer25Mm"] = 6, ["widthMm"] = 4 } }),
        ["swaps"] = new JsonArray(
            Trial("control", [], "works"), Trial("cell-in-a", [("cell", "unit-b")], "works"), Trial("screen-in-a", [("screen", "unit-b")], "notice")),
        ["documentation"] = new JsonArray(new JsonObject { ["subject"] = "disassembly-instructions", ["audience"] = "public", ["cost"] = "free", ["years"] = 7 }),
    }.ToJsonString();

    static JsonObject Id(string id) => new() { ["id"] = id, ["source"] = "device" };

    static JsonObject Part(string id, string role) => new() { ["id"] = id, ["role"] = role };

    static JsonObject Screw(string id, string part) => new()
    {
        ["id"] = id, ["joins"] = new JsonArray(part, "frame"), ["kind"] = "screw", ["count"] = "@COUNT@", ["reuse"] = "reusable",
        ["screw"] = new JsonObject { ["drive"] = "cross-h", ["diameterMm"] = 1.6, ["lengthMm"] = 3 },
    };

    static JsonObject Trial(string id, (string Part, string Unit)[] installed, string result) => new()
    {
        ["id"] = id, ["host"] = "unit-a", ["installed"] = new JsonObject(installed.Select(each => KeyValuePair.Create(each.Part, (JsonNode?)each.Unit))), ["lockState"] = "locked",
        ["checks"] = new JsonArray(
            new JsonObject { ["function"] = "touch", ["result"] = result }, new JsonObject { ["function"] = "charging", ["result"] = "works" }, new JsonObject { ["function"] = "battery-health", ["result"] = "works" }),
    };
}
