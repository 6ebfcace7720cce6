using Acme.Units;
using FixScore;

[assembly: Plugin<Acme.Labels.LabelsPlugin>]

namespace Acme.Labels;

/// <summary>A plugin in good order that brings version 2 of the library along.</summary>
public sealed class LabelsPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new Labels());

    sealed class Labels : IDeviceCriterion
    {
        readonly decimal share = Share.Percent(45);

        public CriterionInfo Info { get; } = new("acme.labels", 1, "Labels", "nothing", "share", Direction.MoreIsBetter, "a test", [], []);

        public Outcome Judge(DeviceContext context) =>
            Outcome.Scored(context.Scale.At(share), Reason.Of("acme-labels", "Always {share}.", [], ("share", share)));
    }
}
