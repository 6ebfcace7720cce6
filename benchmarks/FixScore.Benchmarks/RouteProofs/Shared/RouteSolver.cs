using FixScore.Disassembly;
using FixScore.Records;
using Google.OrTools.Sat;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>What the solver found.</summary>
/// <param name="Status">Whether it is proven, found, or impossible.</param>
/// <param name="Value">What the best route found costs; <c>null</c> when none was found.</param>
/// <param name="Bound">No route costs less.</param>
sealed record Solved(CpSolverStatus Status, decimal? Value, decimal Bound);

/// <summary>Shortest routes by a general constraint solver: Google OR-Tools CP-SAT, one worker, fixed seed.</summary>
static class RouteSolver
{
    public static Solved Solve(TeardownRecord record, string part, RouteCost cost, FirstTool firstTool = FirstTool.NoChange, int limitSeconds = 60)
    {
        var route = new RouteModel(record, part, withOpeners: cost == RouteCost.Steps);
        if (cost == RouteCost.Steps) StepModel.Minimise(route, record, firstTool);
        else route.MinimiseSum(cost == RouteCost.Operations ? _ => 1 : TwiceTheMiddle);
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_time_in_seconds:{limitSeconds}") };
        var status = solver.Solve(route.Model);
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        var unit = cost == RouteCost.Seconds ? 2m : 1m;
        return new(status, found ? (decimal)Math.Round(solver.ObjectiveValue) / unit : null, found ? (decimal)Math.Ceiling(solver.BestObjectiveBound - 1e-6) / unit : 0);
    }

    // Whole numbers only; every operation must have a time.
    static long TwiceTheMiddle(Operation operation) => OperationTime.Of(operation) is { } time
        ? (long)(time.Low + time.High) : throw new ArgumentException("An operation has no time.", nameof(operation));
}
