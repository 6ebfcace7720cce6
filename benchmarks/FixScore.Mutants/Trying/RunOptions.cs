using Xunit.Abstractions;

namespace FixScore.Mutants.Trying;

/// <summary>How tests are found and run: one after another, and what happens is said at once.</summary>
sealed class RunOptions : Xunit.LongLivedMarshalByRefObject, ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
{
    readonly Dictionary<string, object> values = new(StringComparer.Ordinal)
    {
        ["xunit.execution.DisableParallelization"] = true,
        ["xunit.execution.SynchronousMessageReporting"] = true,
    };

    public TValue GetValue<TValue>(string name) => values.TryGetValue(name, out var value) ? (TValue)value : default!;

    public void SetValue<TValue>(string name, TValue value) => values[name] = value!;
}
