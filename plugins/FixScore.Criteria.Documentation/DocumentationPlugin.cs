using FixScore;
using FixScore.Criteria.Documentation;

[assembly: Plugin<DocumentationPlugin>]

namespace FixScore.Criteria.Documentation;

/// <summary>Offers the criteria <c>documentation</c> and <c>repair-information</c>.</summary>
public sealed class DocumentationPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) =>
        registry.Add(new DocumentationCriterion()).Add(new RepairInformationCriterion());
}
