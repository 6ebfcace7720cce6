using FixScore;

[assembly: Plugin<Acme.Unruly.UnrulyPlugin>]

namespace Acme.Unruly;

/// <summary>A plugin whose criteria break the rules, each in its own way, and two that keep them.</summary>
public sealed class UnrulyPlugin : IPlugin
{
    // What nobody could see would not be allocated at all.
    static byte[] kept = [];

    /// <inheritdoc/>
    public void Register(IPluginRegistry registry)
    {
        registry.Add(new Criterion("acme.throws", _ => throw new InvalidOperationException("no")))
            .Add(new Criterion("acme.gives-up", _ => throw new OperationCanceledException("no time")))
            .Add(new Criterion("acme.leaves-scale", context => Outcome.Scored(context.Scale.Max + 1)))
            .Add(new Criterion("acme.says-nothing", _ => null!))
            .Add(new Criterion("acme.leaves-open", _ => Outcome.Scored(1m) with { Missing = default }))
            .Add(new Criterion("acme.half-character", context => Outcome.Scored(context.Scale.Max, Reason.Of("acme.half", "{part} is marked.", [], ("part", "lid \ud83d")))))
            .Add(new Criterion("acme.names-twice", context => Outcome.Scored(context.Scale.Max, Reason.Of("acme.twice", "{n}", [], ("n", 1m), ("n", 2m)))))
            .Add(new Criterion("acme.points-nowhere", context => Outcome.Scored(context.Scale.Max, new Reason("acme.nowhere", "It is so.", [], default))))
            .Add(new Criterion("acme.lacks-text", context => Outcome.Scored(context.Scale.Max, new Reason("acme.silent", null!, [], []))))
            .Add(new Criterion("acme.never-returns", NeverReturn))
            .Add(new Criterion("acme.does-nothing", context => Outcome.Scored(context.Scale.Max)))
            .Add(new Criterion("acme.allocates", Allocate));
    }

    static Outcome NeverReturn(DeviceContext context)
    {
        while (true) Thread.Sleep(50);
    }

    static Outcome Allocate(DeviceContext context)
    {
        kept = new byte[1_000_000];
        return Outcome.Scored(context.Scale.Max);
    }

    sealed class Criterion(string id, Func<DeviceContext, Outcome> judge) : IDeviceCriterion
    {
        public CriterionInfo Info { get; } = new(id, 1, id, "nothing", "1", Direction.MoreIsBetter, "a test", [], []);

        public Outcome Judge(DeviceContext context) => judge(context);
    }
}
