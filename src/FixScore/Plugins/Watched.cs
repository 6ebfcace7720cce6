using System.Collections.Immutable;

namespace FixScore.Plugins;

/// <summary>What a plugin file offers, as its calls are watched.</summary>
/// <param name="calls">How it is called.</param>
/// <param name="plugin">Id of the plugin.</param>
sealed class Watched(PluginCalls calls, string plugin)
{
    /// <exception cref="UnusableOfferException">The criterion judges nothing or says nothing of itself.</exception>
    public ICriterion Of(ICriterion criterion) => (criterion, criterion as IDesignAdvisor) switch
    {
        (IPartCriterion part, { } advisor) => new AdvisingPartCriterion(part, advisor, For(criterion)),
        (IPartCriterion part, null) => new PartCriterion(part, For(criterion)),
        (IDeviceCriterion device, { } advisor) => new AdvisingDeviceCriterion(device, advisor, For(criterion)),
        (IDeviceCriterion device, null) => new DeviceCriterion(device, For(criterion)),
        _ => throw new UnusableOfferException($"The criterion {For(criterion).Info.Id} judges neither the device nor its parts."),
    };

    public IRequirementSet Of(IRequirementSet set) => new RequirementSet(set, calls, plugin);

    public IRecordCheck Of(IRecordCheck check) => new RecordCheck(check, calls, plugin);

    Asked For(ICriterion criterion) => criterion.Info is { Id: not null } info && !info.Options.IsDefault && !info.Reads.IsDefault
        ? new(info, calls, new(plugin, $"the criterion {info.Id}"))
        : throw new UnusableOfferException($"The criterion {criterion.GetType().Name} does not say its id, options or what it reads.");

    /// <summary>A criterion's own words, asked once, and how it is called.</summary>
    sealed record Asked(CriterionInfo Info, PluginCalls Calls, PluginCall Call)
    {
        public T Run<T>(CriterionContext context, Func<T> work) => Calls.Run(Call, context.Cancellation, work);

        public IEnumerable<DesignChange> Suggest(IDesignAdvisor advisor, DeviceContext context) => Run(context, () => advisor.Suggest(context).ToImmutableArray());
    }

    sealed class DeviceCriterion(IDeviceCriterion inner, Asked asked) : IDeviceCriterion
    {
        public CriterionInfo Info => asked.Info;

        public Outcome Judge(DeviceContext context) => asked.Run(context, () => inner.Judge(context));
    }

    sealed class PartCriterion(IPartCriterion inner, Asked asked) : IPartCriterion
    {
        public CriterionInfo Info => asked.Info;

        public Outcome Judge(PartContext context) => asked.Run(context, () => inner.Judge(context));
    }

    sealed class AdvisingDeviceCriterion(IDeviceCriterion inner, IDesignAdvisor advisor, Asked asked) : IDeviceCriterion, IDesignAdvisor
    {
        public CriterionInfo Info => asked.Info;

        public Outcome Judge(DeviceContext context) => asked.Run(context, () => inner.Judge(context));

        public IEnumerable<DesignChange> Suggest(DeviceContext context) => asked.Suggest(advisor, context);
    }

    sealed class AdvisingPartCriterion(IPartCriterion inner, IDesignAdvisor advisor, Asked asked) : IPartCriterion, IDesignAdvisor
    {
        public CriterionInfo Info => asked.Info;

        public Outcome Judge(PartContext context) => asked.Run(context, () => inner.Judge(context));

        public IEnumerable<DesignChange> Suggest(DeviceContext context) => asked.Suggest(advisor, context);
    }

    sealed class RequirementSet(IRequirementSet inner, PluginCalls calls, string plugin) : IRequirementSet
    {
        public RequirementInfo Info { get; } = inner.Info;

        public IEnumerable<Finding> Check(RequirementContext context) =>
            calls.Run(new(plugin, $"the requirement set {Info.Id}"), context.Cancellation, () => inner.Check(context).ToImmutableArray());
    }

    sealed class RecordCheck(IRecordCheck inner, PluginCalls calls, string plugin) : IRecordCheck
    {
        public string Id { get; } = inner.Id;

        public IEnumerable<Problem> Check(TeardownCase source) =>
            calls.Run(new(plugin, $"the record check {Id}"), default, () => inner.Check(source).ToImmutableArray());
    }
}
