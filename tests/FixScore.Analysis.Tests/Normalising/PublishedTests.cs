using System.Collections.Immutable;
using FixScore.Analysis.Normalising;

namespace FixScore.Analysis.Tests.Normalising;

/// <summary>Columns that the Handbook on Constructing Composite Indicators (OECD and JRC, 2008) normalises.</summary>
public sealed class PublishedTests
{
    static readonly UnitTable Schooling = UnitTables.Of(Technology.Table.Units, ["schooling"], Technology.Countries.Select(country => ImmutableArray.Create(country.Values[6])));

    // Table 15 to two decimals, recomputed to four; mean 9.595652 of the 23 countries.
    [Theory]
    [InlineData("Finland", 0.2564, 0.5918, 1.0421, 0.8333, 1.4085)]
    [InlineData("United States", 1.5247, 1.0000, 1.2506, 1.0000, 1.6901)]
    [InlineData("Korea", 0.7637, 0.7551, 1.1255, 0.9000, 1.5211)]
    [InlineData("Norway", 1.4613, 0.9796, 1.2401, 0.9917, 1.6761)]
    [InlineData("Singapore", -1.5826, 0.0000, 0.7399, 0.5917, 1.0000)]
    [InlineData("Spain", -1.4557, 0.0408, 0.7608, 0.6083, 1.0282)]
    public void Years_of_schooling_come_out_as_in_Table_15(string country, double z, double minMax, double toMean, double toBest, double toWorst)
    {
        var unit = Technology.Number(country);
        Is(z, Normalisation.ZScore(Direction.MoreIsBetter), 0.00005m);
        Is(minMax, Normalisation.OwnExtremes(Direction.MoreIsBetter), 0.00005m);
        Is(toMean, Normalisation.ToReference(9.595652m), 0.00006m);
        Is(toBest, Normalisation.ToLeader(Direction.MoreIsBetter), 0.00005m);
        Is(toWorst, Normalisation.ToReference(7.1m), 0.00005m);

        void Is(double expected, Normalisation way, decimal within) =>
            Support.Near((decimal)expected, Normaliser.Apply(Schooling, way)[unit, 0].Low, within);
    }

    // Table 14: in Celsius 0.949 and 0.949, 0.833 and 0.821; in Fahrenheit 0.965 and 0.965. More digits recomputed.
    [Fact]
    public void A_share_of_the_leader_turns_with_the_unit_of_temperature_as_in_Table_14()
    {
        var (before, after) = (Mean((35, 75), (39, 50)), Mean((35.9m, 70), (40, 45)));
        Support.Near(0.948718m, before[0], 5e-7m);
        Support.Near(0.948750m, after[0], 5e-7m);
        Support.Near(0.833333m, before[1], 5e-7m);
        Support.Near(0.821429m, after[1], 5e-7m);
        (before, after) = (Mean((95, 75), (102.2m, 50)), Mean((96.62m, 70), (104, 45)));
        Support.Near(0.964775m, before[0], 5e-7m);
        Support.Near(0.964519m, after[0], 5e-7m);
    }

    static decimal[] Mean((decimal, decimal) first, (decimal, decimal) second)
    {
        var table = Normaliser.Apply(Support.Table([first.Item1, first.Item2], [second.Item1, second.Item2]), Normalisation.ToLeader(Direction.MoreIsBetter));
        return [.. table.Rows.Select(row => (row[0].Low + row[1].Low) / 2m)];
    }
}
