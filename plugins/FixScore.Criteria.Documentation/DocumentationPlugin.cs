using FixScore;
using FixScore.Criteria.Documentation;

[assembly: Plugin<DocumentationPlugin>]

namespace FixScore.Criteria.Documentation;

/// <summary>Offers the criterion <c>documentation</c>.</summary>
public sealed class DocumentationPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new DocumentationCriterion());
}
