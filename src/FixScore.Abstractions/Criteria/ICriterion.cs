namespace FixScore;

/// <summary>One rule that turns observations into a score. Implement <see cref="IDeviceCriterion"/> or <see cref="IPartCriterion"/>.</summary>
/// <remarks>
/// <para>Immutable and thread safe: one instance judges many records at once. The same record and options give the same
/// outcome, everywhere: no clock, culture, environment or random source.</para>
/// <para><b>The failure rule.</b> What a record lacks is never an error: it widens the score. Throwing is a bug of the
/// criterion: a strict caller gets it as a fault and no score, a tolerant one a leaf over the whole scale that names it;
/// other criteria are not touched. So is a score outside the scale. <see cref="OperationCanceledException"/> is passed on.</para>
/// </remarks>
public interface ICriterion
{
    /// <summary>What the criterion says of itself. The same object at every call.</summary>
    CriterionInfo Info { get; }
}

/// <summary>A criterion that judges the device as a whole.</summary>
public interface IDeviceCriterion : ICriterion
{
    /// <summary>Judges a device. See <see cref="ICriterion"/> for what throwing means.</summary>
    Outcome Judge(DeviceContext context);
}

/// <summary>A criterion that judges one part at a time; a profile spreads it over a set of roles.</summary>
public interface IPartCriterion : ICriterion
{
    /// <summary>Judges a part. See <see cref="ICriterion"/> for what throwing means.</summary>
    Outcome Judge(PartContext context);
}

/// <summary>Optional: design changes that could raise this criterion's score.</summary>
public interface IDesignAdvisor
{
    /// <summary>Changes worth trying on the record's device, each a patch of the record as <c>RecordFile</c> writes it.</summary>
    /// <remarks>
    /// Only what makes sense for this record and is not so already. Each change by itself applies cleanly, leaves a valid
    /// record and never lowers the low end of this criterion's score. Always the same changes, in the same order. A patch
    /// is a what-if: it says what a record of the changed device would say, nothing about the device that was taken apart.
    /// </remarks>
    /// <param name="context">The case, the scale and the options; for a part criterion the roles it is judged among as well.</param>
    IEnumerable<DesignChange> Suggest(DeviceContext context);
}

/// <summary>A change of the design, as a patch of the record.</summary>
/// <param name="Id">Names the change among those of its criterion, a slug.</param>
/// <param name="Why">What changes and why it should help.</param>
/// <param name="JsonPatch">An RFC 6902 patch of the record, as JSON text.</param>
public sealed record DesignChange(string Id, Reason Why, string JsonPatch);
