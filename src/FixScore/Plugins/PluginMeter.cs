using System.Collections.Immutable;
using FixScore.Plugins;

namespace FixScore;

/// <summary>Counts calls of plugin files and what they allocate, for people only: no score document depends on it. Thread safe.</summary>
public sealed class PluginMeter
{
    readonly Lock gate = new();
    readonly SortedDictionary<string, PluginMeasure> measures = new(StringComparer.Ordinal);

    /// <summary>What was counted so far, by plugin and call.</summary>
    public ImmutableArray<PluginMeasure> Measures
    {
        get
        {
            lock (gate) return [.. measures.Values];
        }
    }

    internal void Count(PluginCall call, long bytes)
    {
        lock (gate)
        {
            var before = measures.GetValueOrDefault(call.ToString()) ?? new(call.Plugin, call.What, 0, 0);
            measures[call.ToString()] = before with { Calls = before.Calls + 1, Bytes = before.Bytes + bytes };
        }
    }
}

/// <summary>What the calls of one kind came to.</summary>
/// <param name="Plugin">Id of the plugin.</param>
/// <param name="What">What was called, such as <c>the criterion acme.part-marking</c>.</param>
/// <param name="Calls">How often.</param>
/// <param name="Bytes">Bytes allocated by all of them together on the threads they ran on; fewer is better. Facts derived first in a call count there.</param>
public sealed record PluginMeasure(string Plugin, string What, long Calls, long Bytes);
