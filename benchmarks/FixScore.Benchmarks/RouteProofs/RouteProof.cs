using System.Diagnostics;
using FixScore.Disassembly;
using Google.OrTools.Sat;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>How one device went: our search and the solver on the same question, one after the other, one thread each.</summary>
/// <param name="Ours">Processor seconds until our search had proven its route, or given up.</param>
/// <param name="IsProven">Whether it had.</param>
/// <param name="States">States our search had to be allowed to open for that, up to a quarter more.</param>
/// <param name="Megabytes">What our search allocated.</param>
/// <param name="Gap">How far our route may be from the least, as a share of its steps; 0 when proven.</param>
/// <param name="Solver">Processor seconds of the solver.</param>
/// <param name="SolverIsProven">Whether the solver had proven its route within its time.</param>
/// <param name="Agree">Whether both cost the same; <c>null</c> unless both are proven.</param>
sealed record RouteProof(double Ours, bool IsProven, int States, double Megabytes, double Gap, double Solver, bool SolverIsProven, bool? Agree)
{
    public static RouteProof Of(DeviceInstance device, int limitSeconds)
    {
        var query = new RouteQuery(device.Deepest);
        var (allocated, began) = (GC.GetAllocatedBytesForCurrentThread(), Busy);
        var route = new RecordCase(device.Record).Derive<Route, RouteQuery>(query);
        var (ours, bytes) = ((Busy - began).TotalSeconds, GC.GetAllocatedBytesForCurrentThread() - allocated);
        began = Busy;
        var solved = RouteSolver.Solve(device.Record, device.Deepest, RouteCost.Steps, limitSeconds: limitSeconds);
        var solver = (Busy - began).TotalSeconds;
        var solverIsProven = solved.Status == CpSolverStatus.Optimal;
        bool? agree = route.IsOptimal && solverIsProven ? route.Steps!.Value.High == solved.Value : null;
        var gap = route.IsOptimal ? 0 : 1 - (double)(route.LowerBound!.Value / route.Steps!.Value.High);
        return new(ours, route.IsOptimal, StatesFor(device, query, route), bytes / 1048576.0, gap, solver, solverIsProven, agree);
    }

    // Processor time, because a shared machine makes the clock run on.
    static TimeSpan Busy => Process.GetCurrentProcess().TotalProcessorTime;

    // The least allowance with which the route is still proven, found by doubling it and halving the difference twice.
    static int StatesFor(DeviceInstance device, RouteQuery query, Route route)
    {
        if (!route.IsOptimal) return query.Effort;
        var enough = 1;
        while (!IsEnough(enough)) enough *= 2;
        var step = enough / 4;
        for (var i = 0; i < 2 && step > 0; i++, step /= 2)
            if (IsEnough(enough - step)) enough -= step;
        return enough;

        bool IsEnough(int effort) => new RecordCase(device.Record).Derive<Route, RouteQuery>(query with { Effort = effort }).IsOptimal;
    }
}
