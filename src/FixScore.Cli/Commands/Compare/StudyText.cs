using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What was drawn, in sentences to be quoted.</summary>
static class StudyText
{
    public static ImmutableArray<string> Methods(ImmutableArray<WeightStudy> studies, WeightSpread spread, AcceptabilityOptions options) => studies.IsEmpty ? [] :
    [
        $"Acceptability is the share of {Law(spread)} that gives a unit a place under the weighted arithmetic mean (Lahdelma and Salminen 2001){(studies.All(study => study.Exact is not null) ? ", measured exactly." : string.Create(CultureInfo.InvariantCulture, $", by {options.Draws} draws with seed {options.Seed}; open values are drawn uniformly from between their ends."))}",
        "For a profile the criteria are the lines directly below its total; acceptability and stability leave caps by gates aside.",
        "Stability intervals are exact, the other weights keeping their proportions; open values enter them with their middles.",
        .. SensitivityText.Methods(studies),
    ];

    public static string Law(WeightSpread spread) => spread switch
    {
        WeightSpread.Uniform => "all weights, each as likely as any other,",
        WeightSpread.Ordered => "all weights in the same order of importance",
        _ => string.Create(CultureInfo.InvariantCulture, $"weights around those given (Dirichlet, parameters summing to {WeightStudy.Concentration:0})"),
    };
}
