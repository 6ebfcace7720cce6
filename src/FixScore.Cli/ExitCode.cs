namespace FixScore.Cli;

/// <summary>What the program's exit code says.</summary>
static class ExitCode
{
    public const int Done = 0;
    public const int Difference = 1;
    public const int Usage = 2;
    public const int InvalidInput = 3;
    public const int PluginFailed = 4;
    public const int OutputFailed = 5;
    public const int Bug = 70;
    public const int Interrupted = 130;
}
