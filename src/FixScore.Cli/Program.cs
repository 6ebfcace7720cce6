using FixScore.Cli;
using FixScore.Cli.Terminal;

using var interrupt = new CancellationTokenSource();
Console.CancelKeyPress += (_, press) =>
{
    // Work that looks at the token ends by itself; what waits for standard input does not.
    press.Cancel = true;
    interrupt.Cancel();
    _ = Task.Delay(TimeSpan.FromSeconds(1)).ContinueWith(_ => Environment.Exit(ExitCode.Interrupted), TaskScheduler.Default);
};
// Not by returning: a thread that a plugin left behind would keep the process.
Environment.Exit(App.Run(args, Streams.OfConsole(), interrupt.Token));
