using System.Text;
using FixScore.Cli.Terminal;
using FixScore.Disassembly;
using FixScore.Reporting.Pictures;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Writes the picture of one record.</summary>
static class PictureFile
{
    /// <summary>Refuses several records: a picture shows one device.</summary>
    /// <exception cref="UsageException">There are several.</exception>
    public static void Check(string? path, int records)
    {
        if (path is not null && records > 1) throw new UsageException($"--svg draws one record, and {records} are given. Call route once for each of them.");
    }

    /// <summary>Draws the routes asked for, with the priority parts where every part was.</summary>
    public static void Write(CommandSession session, string? path, AskedParts asked, RouteQuery query, bool isNamed)
    {
        if (path is null) return;
        var parts = query with { Parts = isNamed ? [.. asked.Parts.Select(part => part.Id)] : [] };
        session.Write(path, Encoding.UTF8.GetBytes(Drawn(session, asked, parts)));
        if (!session.AsJson) session.Canvas.Line($"Picture written to {path}.");
    }

    static string Drawn(CommandSession session, AskedParts asked, RouteQuery query)
    {
        using var progress = Progress.Start(session, "Drawing");
        return RoutePicture.Svg(new RecordCase(asked.Record, session.Cancellation), query, session.Culture);
    }
}
