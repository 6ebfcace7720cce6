using FixScore.Cli;
using FixScore.Cli.Terminal;

using var interrupt = new CancellationTokenSource();
Console.CancelKeyPress += (_, press) =>
{
    press.Cancel = true;
    interrupt.Cancel();
};
return App.Run(args, Streams.OfConsole(), interrupt.Token);
