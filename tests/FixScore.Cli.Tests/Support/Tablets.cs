using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Installed;

namespace FixScore.Cli.Tests.Support;

/// <summary>The tablets of the demo, as they are or changed.</summary>
static class Tablets
{
    public static byte[] Slate2 => Resources.Bytes("demo/larkfield-slate-2.json");

    public static byte[] Slate3 => Resources.Bytes("demo/larkfield-slate-3.json");

    public static byte[] Plinth => Resources.Bytes("demo/ostravane-plinth-11.json");

    public static byte[] Changed(byte[] record, Action<JsonNode> change)
    {
        var node = JsonNode.Parse(record)!;
        change(node);
        return JsonSerializer.SerializeToUtf8Bytes(node);
    }

    public static byte[] Named(byte[] record, string name) => Changed(record, node =>
    {
        node["device"]!["model"] = name;
        foreach (var part in node["parts"]!.AsArray()) part!["name"] = name;
    });
}
