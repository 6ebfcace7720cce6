namespace FixScore.Cli.Terminal;

/// <summary>A word on standard error when something takes more than a second and somebody looks.</summary>
sealed class Progress : IDisposable
{
    readonly Timer? timer;
    readonly TextWriter error;
    int dots;

    Progress(TextWriter error, string what, bool isSeen)
    {
        this.error = error;
        if (isSeen) timer = new(_ => error.Write(Interlocked.Increment(ref dots) == 1 ? $"{what} ..." : "."), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));
    }

    public static Progress Start(CommandSession session, string what) => new(session.Error, what, session.ErrorIsTerminal);

    public void Dispose()
    {
        timer?.Dispose();
        if (dots > 0) error.WriteLine();
    }
}
