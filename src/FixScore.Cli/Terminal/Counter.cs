using System.Globalization;

namespace FixScore.Cli.Terminal;

/// <summary>How far a long run is, on standard error, about once a second and only when somebody looks.</summary>
sealed class Counter(CommandSession session, string what)
{
    long shownAt = Environment.TickCount64;
    bool shown;

    public void Show(long count)
    {
        if (!session.ErrorIsTerminal || Environment.TickCount64 - shownAt < 1000) return;
        (shownAt, shown) = (Environment.TickCount64, true);
        session.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{count} {what}"));
    }

    public void End()
    {
        if (shown) session.Error.WriteLine();
    }
}
