using FixScore.Disassembly.Model;

namespace FixScore.Disassembly;

/// <summary>Facts that do not hold, in words.</summary>
static class WantText
{
    /// <summary>A fact that does not hold at some moment.</summary>
    public static string NotYet(Want want) => want switch
    {
        (WantKind.Undone, var id, _) => $"'{id}' is not undone",
        (WantKind.Removed, var id, _) => $"'{id}' is not removed",
        (WantKind.Away, var id, { } joint) => $"'{id}' is still over '{joint}'",
        (WantKind.Away, var id, _) => $"'{id}' is not away",
        var (_, id, _) => $"'{id}' is not done",
    };

    /// <summary>A fact that never holds.</summary>
    public static string Never(Want want) => want switch
    {
        (WantKind.Undone, var id, _) => $"nothing that can be done undoes '{id}'",
        (WantKind.Removed, var id, _) => $"nothing that can be done removes '{id}'",
        (WantKind.Away, var id, { } joint) => $"nothing that can be done moves '{id}' from over '{joint}'",
        (WantKind.Away, var id, _) => $"nothing that can be done moves '{id}' away",
        var (_, id, _) => $"'{id}' can never be done",
    };
}
