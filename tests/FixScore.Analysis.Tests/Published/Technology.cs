using System.Collections.Immutable;

namespace FixScore.Analysis.Tests;

/// <summary>Technology Achievement Index: OECD and JRC, Handbook on Constructing Composite Indicators (2008), data of Table A.2, ranks of Tables 23 and 38.</summary>
/// <remarks>Telephones and electricity are decadic logarithms. The index and the mean to four places are recomputed from the data, not published.</remarks>
static class Technology
{
    public sealed record Country(string Name, ImmutableArray<decimal> Values, int LinearRank, int GeometricRank, int NonCompensatoryRank, decimal Index, decimal Mean);

    public static readonly ImmutableArray<Country> Countries =
    [
        new("Finland", [187m, 125.6m, 200.2m, 50.7m, 3.08m, 4.15m, 10m, 27.4m], 1, 2, 3, 0.7449m, 30.9177m),
        new("United States", [289m, 130m, 179.1m, 66.2m, 3.00m, 4.07m, 12m, 13.9m], 2, 1, 1, 0.7329m, 31.2402m),
        new("Sweden", [271m, 156.6m, 125.8m, 59.7m, 3.10m, 4.14m, 11.4m, 15.3m], 3, 3, 2, 0.7038m, 30.3160m),
        new("Japan", [994m, 64.6m, 49m, 80.8m, 3.00m, 3.86m, 9.5m, 10m], 4, 4, 4, 0.6984m, 26.9670m),
        new("Korea", [779m, 9.8m, 4.8m, 66.7m, 2.97m, 3.65m, 10.8m, 23.2m], 5, 16, 9, 0.6659m, 16.8951m),
        new("Netherlands", [189m, 151.2m, 136m, 50.9m, 3.02m, 3.77m, 9.4m, 9.5m], 6, 5, 8, 0.6304m, 25.8782m),
        new("United Kingdom", [82m, 134m, 57.4m, 61.9m, 3.02m, 3.73m, 9.4m, 14.9m], 7, 6, 5, 0.6065m, 22.3200m),
        new("Singapore", [8m, 25.5m, 72.3m, 74.9m, 2.95m, 3.83m, 7.1m, 24.2m], 8, 18, 12, 0.5973m, 14.6696m),
        new("Canada", [31m, 38.6m, 108m, 48.7m, 2.94m, 4.18m, 11.6m, 14.2m], 9, 13, 11, 0.5895m, 18.3293m),
        new("Australia", [75m, 18.2m, 125.9m, 16.2m, 2.94m, 3.94m, 10.9m, 25.3m], 10, 14, 9, 0.5880m, 17.5240m),
        new("Germany", [235m, 36.8m, 41.2m, 64.2m, 2.94m, 3.75m, 10.2m, 14.4m], 11, 8, 7, 0.5830m, 20.9453m),
        new("Norway", [103m, 20.2m, 193.6m, 19m, 3.12m, 4.39m, 11.9m, 11.2m], 12, 11, 6, 0.5804m, 18.5419m),
        new("Ireland", [106m, 110.3m, 48.6m, 53.6m, 2.97m, 3.68m, 9.4m, 12.3m], 13, 7, 13, 0.5667m, 21.0458m),
        new("Belgium", [72m, 73.9m, 58.9m, 47.6m, 2.91m, 3.86m, 9.3m, 13.6m], 14, 9, 17, 0.5530m, 19.5333m),
        new("New Zealand", [103m, 13m, 146.7m, 15.4m, 2.86m, 3.91m, 11.7m, 13.1m], 15, 17, 15, 0.5488m, 16.3810m),
        new("Austria", [165m, 14.8m, 84.2m, 50.3m, 2.99m, 3.79m, 8.4m, 13.6m], 16, 12, 15, 0.5446m, 18.4435m),
        new("France", [205m, 33.6m, 36.4m, 58.9m, 2.97m, 3.80m, 7.9m, 12.6m], 17, 10, 14, 0.5362m, 18.9444m),
        new("Israel", [74m, 43.6m, 43.2m, 45m, 2.96m, 3.74m, 9.6m, 11m], 18, 15, 18, 0.5151m, 17.1063m),
        new("Spain", [42m, 8.6m, 21m, 53.4m, 2.86m, 3.62m, 7.3m, 15.6m], 19, 19, 20, 0.4815m, 12.1585m),
        new("Italy", [13m, 9.8m, 30.4m, 51m, 3.00m, 3.65m, 7.2m, 13m], 20, 21, 19, 0.4722m, 10.9216m),
        new("Czech Republic", [28m, 4.2m, 25m, 51.7m, 2.75m, 3.68m, 9.5m, 8.2m], 21, 23, 21, 0.4662m, 10.2287m),
        new("Hungary", [26m, 6.2m, 21.6m, 63.5m, 2.73m, 3.46m, 9.1m, 7.7m], 22, 22, 23, 0.4647m, 10.4875m),
        new("Slovenia", [105m, 4m, 20.3m, 49.5m, 2.84m, 3.71m, 7.1m, 10.6m], 23, 20, 22, 0.4594m, 11.6299m),
    ];

    public static readonly ImmutableArray<string> Indicators = ["patents", "royalties", "internet", "exports", "telephones", "electricity", "schooling", "university"];

    public static readonly ImmutableArray<decimal> EqualWeights = [.. Indicators.Select(_ => 1m)];

    public static readonly UnitTable Table = UnitTables.Of([.. Countries.Select(country => country.Name)], Indicators, Countries.Select(country => country.Values));

    public static int Number(string country) => Table.Units.IndexOf(country);
}
