namespace FixScore.Cli.Commands.Swaps;

/// <summary><c>swaps</c>: what swap trials prove.</summary>
sealed class SwapsCommand : AppCommand
{
    public SwapsCommand() : base("swaps", "Says what trials with parts of other units prove about software that ties parts.")
    {
        Add(new SwapsInferCommand());
    }
}
