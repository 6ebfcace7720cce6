using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Tests;

/// <summary>Records of a device with a main board and a few parts, and trials on its units <c>a</c>, <c>b</c> and <c>c</c>.</summary>
static class Bench
{
    public static Part Board { get; } = new() { Id = "board", Role = Roles.Mainboard };

    public static Part Part(string id) => new() { Id = id, Role = id };

    public static Joint Integral(params string[] parts) =>
        new() { Id = $"joint-{string.Join('-', parts)}", Joins = [.. parts], Kind = JointKind.Adhesive, Integral = true };

    /// <summary>A main board with a display, a battery and a camera.</summary>
    public static TeardownRecord Phone(params SwapTrial[] swaps) => Device([Board, Part("display"), Part("battery"), Part("camera")], [], swaps);

    public static TeardownRecord Device(IEnumerable<Part> parts, IEnumerable<Joint> joints, IEnumerable<SwapTrial> swaps) => new()
    {
        Id = "record",
        Device = new() { Maker = "Maker", Model = "Model", Kind = "smartphone" },
        Assessment = new() { Assessor = "workshop", Date = new(2025, 3, 1), Units = [new() { Id = "a" }, new() { Id = "b" }, new() { Id = "c" }] },
        Parts = EntryList.Of(parts.ToImmutableArray()),
        Joints = EntryList.Of(joints.ToImmutableArray()),
        Swaps = EntryList.Of(swaps.ToImmutableArray()),
    };

    /// <summary>A trial on unit <c>a</c>; <paramref name="installed"/> reads <c>display=b battery=c</c>, empty for none.</summary>
    public static SwapTrial Swap(string id, string installed, params FunctionCheck[] checks) => new()
    {
        Id = id,
        Host = "a",
        Installed =
        [
            .. installed.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=')).Select(pair => new InstalledPart(pair[0], pair[1])),
        ],
        Checks = [.. checks],
    };

    public static FunctionCheck Works(string function = "all", params string[] implicates) => Check(function, SwapResult.Works, implicates);

    public static FunctionCheck Warns(string function = "all", params string[] implicates) => Check(function, SwapResult.Warning, implicates);

    public static FunctionCheck Untested(string function, params string[] implicates) => Check(function, SwapResult.Untested, implicates);

    /// <summary>A check; without parts any may be the cause.</summary>
    public static FunctionCheck Check(string function, OneOf<SwapResult> result, params string[] implicates) => new()
    {
        Function = function, Result = result, Implicates = implicates.Length == 0 ? default : EntryList.Of(implicates.ToImmutableArray()),
    };

    public static PairingVerdicts Infer(TeardownRecord record) => new RecordCase(record).Derive<PairingVerdicts>();

    /// <summary>The only context of trials on a phone.</summary>
    public static ContextVerdicts Infer(params SwapTrial[] swaps) => Assert.Single(Infer(Phone(swaps)).Contexts);

    public static Verdict VerdictOn(this ContextVerdicts context, string part) => context.Of(part)!.Verdict;

    public static string Joined(this IEnumerable<string> ids) => string.Join(' ', ids);
}
