namespace FixScore.Laws.Tests;

/// <summary>Criteria with the ids and options of installed ones, which score what a test says.</summary>
sealed class AnsweringPlugin(Catalogue like, Func<string, Scale, decimal> points) : IPlugin
{
    public void Register(IPluginRegistry registry)
    {
        foreach (var (criterion, _) in like.Criteria)
            registry.Add(criterion is IPartCriterion ? new OfPart(criterion.Info, points) : new OfDevice(criterion.Info, points));
    }

    sealed class OfDevice(CriterionInfo info, Func<string, Scale, decimal> points) : IDeviceCriterion
    {
        public CriterionInfo Info => info;

        public Outcome Judge(DeviceContext context) => Outcome.Scored(points(info.Id, context.Scale));
    }

    sealed class OfPart(CriterionInfo info, Func<string, Scale, decimal> points) : IPartCriterion
    {
        public CriterionInfo Info => info;

        public Outcome Judge(PartContext context) => Outcome.Scored(points(info.Id, context.Scale));
    }
}
