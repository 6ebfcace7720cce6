namespace FixScore.Cli.Commands.Swaps;

/// <summary><c>swaps</c>: trials with parts of two units.</summary>
sealed class SwapsCommand : AppCommand
{
    public SwapsCommand() : base("swaps", "What swap trials prove about parts tied to the main board, and which to make next.")
    {
        Add(new SwapsInferCommand());
        Add(new SwapsPlanCommand());
    }
}
