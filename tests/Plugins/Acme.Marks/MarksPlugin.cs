using Acme.Units;
using FixScore;

[assembly: Plugin<Acme.Marks.MarksPlugin>]

namespace Acme.Marks;

/// <summary>A plugin in good order that brings version 1 of a library along.</summary>
public sealed class MarksPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new Marks());

    sealed class Marks : IDeviceCriterion
    {
        readonly decimal share = Share.Tenths(3);

        public CriterionInfo Info { get; } = new("acme.marks", 1, "Marks", "nothing", "share", Direction.MoreIsBetter, "a test", [], []);

        public Outcome Judge(DeviceContext context) =>
            Outcome.Scored(context.Scale.At(share), Reason.Of("acme-marks", "Always {share}.", [], ("share", share)));
    }
}
