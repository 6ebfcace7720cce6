using System.Globalization;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>Time to prove the fewest steps to the deepest part of generated devices, ours against a general constraint solver.</summary>
/// <remarks><c>routes [devices per size] [seconds for the solver per device]</c>. Aim: no slower than the solver at any size.</remarks>
static class RouteProofs
{
    static readonly int[] Sizes = [10, 20, 40, 80];

    public static void Run(string[] args)
    {
        var devices = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 10;
        var limit = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 20;
        RouteProof.Of(DeviceInstance.Of(6, 0), limit);
        Console.WriteLine($"Fewest steps to the deepest part; {devices} devices a size, one part in five with two ways; solver: CP-SAT, one worker, {limit} s a device.");
        Console.WriteLine("parts  operations |  ours: median     worst   proven   states (median, worst)   MB |  solver: median    worst   proven | solver/ours | agree | growth");
        double? before = null;
        foreach (var parts in Sizes)
        {
            var instances = Enumerable.Range(0, devices).Select(seed => DeviceInstance.Of(parts, seed)).ToArray();
            var proofs = instances.Select(device => RouteProof.Of(device, limit)).ToArray();
            var median = Median(proofs.Select(proof => proof.Ours));
            Console.WriteLine(Row(parts, Median(instances.Select(device => (double)device.Record.Operations.Count)), proofs, median / before));
            before = median;
        }
    }

    static string Row(int parts, double operations, RouteProof[] proofs, double? growth)
    {
        var (ours, solver) = (Median(proofs.Select(proof => proof.Ours)), Median(proofs.Select(proof => proof.Solver)));
        var agreed = proofs.Where(proof => proof.Agree is not null).ToArray();
        return string.Create(CultureInfo.InvariantCulture,
            $"{parts,5} {operations,11:0} | {ours,13:0.0000} s {proofs.Max(proof => proof.Ours),7:0.000} s {proofs.Count(proof => proof.IsProven),4}/{proofs.Length} {Median(proofs.Select(proof => (double)proof.States)),14:0} {proofs.Max(proof => proof.States),9} {Median(proofs.Select(proof => proof.Megabytes)),7:0.0} | {solver,13:0.00} s {proofs.Max(proof => proof.Solver),7:0.0} s {proofs.Count(proof => proof.SolverIsProven),4}/{proofs.Length} | {solver / ours,11:0} | {agreed.Count(proof => proof.Agree == true),2}/{agreed.Length,-2} | {growth:0.0}");
    }

    static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
