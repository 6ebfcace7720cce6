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
        Console.WriteLine($"Fewest steps to the deepest part, {devices} devices a size, one part in five with two ways; processor seconds.");
        Console.WriteLine($"Solver: CP-SAT, one worker, {limit} s a device. Ratio: solver over ours where ours is proven, at least that where the solver is not.");
        foreach (var shape in Enum.GetValues<DeviceShape>()) Table(shape, devices, limit);
    }

    static void Table(DeviceShape shape, int devices, int limit)
    {
        Console.WriteLine();
        Console.WriteLine($"{shape,-6} operations |  ours: median   worst  proven   gap  states (median, worst)      MB  growth |  solver: median   worst  proven | ratio  agree");
        double? before = null;
        foreach (var parts in Sizes)
        {
            var instances = Enumerable.Range(0, devices).Select(seed => DeviceInstance.Of(parts, seed, shape)).ToArray();
            var proofs = instances.Select(device => RouteProof.Of(device, limit)).ToArray();
            var median = Median(proofs.Select(proof => proof.Ours));
            var operations = Median(instances.Select(device => (double)device.Record.Operations.Count));
            Console.WriteLine($"{parts,6} {operations,10:0} | {Ours(proofs)} {median / before,7:0.0} | {Solver(proofs)} | {Both(proofs)}");
            before = median;
        }
    }

    static string Ours(RouteProof[] proofs) => string.Create(CultureInfo.InvariantCulture,
        $"{Median(proofs.Select(proof => proof.Ours)),13:0.0000} {proofs.Max(proof => proof.Ours),7:0.000} {Share(proofs, proof => proof.IsProven),7} {Median(proofs.Select(proof => proof.Gap)),5:0%} {Median(proofs.Select(proof => (double)proof.States)),15:0} {proofs.Max(proof => proof.States),7} {Median(proofs.Select(proof => proof.Megabytes)),7:0.0}");

    static string Solver(RouteProof[] proofs) => string.Create(CultureInfo.InvariantCulture,
        $"{Median(proofs.Select(proof => proof.Solver)),15:0.00} {proofs.Max(proof => proof.Solver),7:0.0} {Share(proofs, proof => proof.SolverIsProven),7}");

    static string Both(RouteProof[] proofs)
    {
        double[] ratios = [.. proofs.Where(proof => proof.IsProven).Select(proof => proof.Solver / proof.Ours)];
        RouteProof[] compared = [.. proofs.Where(proof => proof.Agree is not null)];
        var ratio = ratios.Length == 0 ? "-" : Median(ratios).ToString("0", CultureInfo.InvariantCulture);
        return $"{ratio,5} {Share(compared, proof => proof.Agree == true),6}";
    }

    static string Share(RouteProof[] proofs, Func<RouteProof, bool> which) => $"{proofs.Count(which)}/{proofs.Length}";

    static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
