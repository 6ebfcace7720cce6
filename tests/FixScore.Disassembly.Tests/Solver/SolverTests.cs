using FixScore.Benchmarks.RouteProofs;

namespace FixScore.Disassembly.Tests.Solver;

/// <summary>Routes in devices too large to try every sequence cost what a general solver proves to be least.</summary>
/// <remarks>In classes of their own, so that they run side by side.</remarks>
public abstract class SolverTests(RouteCost cost, FirstTool firstTool, int devices = 200)
{
    [Fact]
    public void Routes_cost_what_a_general_solver_proves_to_be_least()
    {
        var operations = 0;
        for (var seed = 0; seed < devices; seed++)
        {
            var device = DeviceInstance.Of(5 + seed % 3, seed, seed % 2 == 0 ? DeviceShape.Stack : DeviceShape.Layers);
            var solved = RouteSolver.Solve(device.Record, device.Deepest, cost, firstTool);
            var route = new RecordCase(device.Record).RouteTo(device.Deepest, cost, firstTool);
            Assert.True(route.IsOptimal, $"seed {seed}: not proven");
            Assert.True(solved.Value == solved.Bound && solved.Value == Cost(route), $"seed {seed}: {Cost(route)}, the solver says {solved}");
            operations += device.Record.Operations.Count;
        }
        Assert.InRange(operations / devices, 12, 25);
    }

    decimal? Cost(Route route) => cost switch
    {
        RouteCost.Steps => route.Steps!.Value.High,
        RouteCost.Operations => route.Operations,
        _ => route.Seconds!.Value.High,
    };

    public sealed class Steps() : SolverTests(RouteCost.Steps, FirstTool.NoChange);

    public sealed class StepsWithFirstTool() : SolverTests(RouteCost.Steps, FirstTool.Change, devices: 40);

    public sealed class Operations() : SolverTests(RouteCost.Operations, FirstTool.NoChange);

    public sealed class Seconds() : SolverTests(RouteCost.Seconds, FirstTool.NoChange);
}
