using System.Numerics;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Draws weights and values, and tallies places. Immutable and thread safe.</summary>
sealed class Simulation(UnitTable table, WeightLaw law, AcceptabilityOptions options)
{
    const int WeightStream = 0;
    const int ValueStream = 1;

    readonly int _units = table.Units.Length;
    readonly int _criteria = table.Criteria.Length;
    readonly WeightDraws _weights = new(law, table.Criteria.Length, RandomCounter.Of(options.Seed, WeightStream));
    readonly DrawnValues _values = new(table, RandomCounter.Of(options.Seed, ValueStream));

    public bool HasOpenValues => _values.AreOpen;

    /// <summary>What a weight of 1 is in sums of whole numbers: the sum over all draws just fits.</summary>
    public double Scale => 1L << (62 - BitOperations.Log2((uint)options.Draws) - 1);

    public PlaceTally Places()
    {
        var counts = PlaceCounts.For(_units);
        var states = Shares.Run(((long)options.Draws + BlockRanking.Most - 1) / BlockRanking.Most, options.Threads, () => new Worker(this, counts()), (worker, piece) => worker.Count(piece * BlockRanking.Most));
        foreach (var other in states.Skip(1)) states[0].Tally.Add(other.Tally);
        return states[0].Tally;
    }

    sealed class Worker
    {
        readonly Simulation _simulation;
        readonly double[] _weights;
        readonly double[] _scores;
        readonly BlockRanking _ranking;

        public Worker(Simulation simulation, PlaceCounts counts)
        {
            _simulation = simulation;
            _weights = new double[simulation._criteria * Lanes.Count];
            _scores = new double[simulation._units * Lanes.Count];
            Tally = new(simulation._units, simulation._criteria, simulation.Options.WithWins, counts);
            _ranking = new(simulation._units, Tally, simulation.Scale);
        }

        public PlaceTally Tally { get; }

        public void Count(long first)
        {
            var draws = (int)Math.Min(BlockRanking.Most, _simulation.Options.Draws - first);
            for (var (block, done) = (0, 0); done < draws; block++, done += Lanes.Count)
            {
                _simulation._weights.Fill(first + done, _weights);
                _simulation._values.Score(first + done, _weights, _scores);
                _ranking.Rank(block, _weights, _scores, Math.Min(Lanes.Count, draws - done));
            }
            _ranking.Tally();
        }
    }

    AcceptabilityOptions Options => options;

    /// <summary>In how many draws of the values each of some weights makes its unit first, alone or with others.</summary>
    public int[] FirstsUnder((int Unit, double[] Weights)[] central)
    {
        var states = Shares.Run(options.Draws, options.Threads, () => new CentralCheck(central, _units, _criteria), (check, draw) => check.Count(_values.At(draw)));
        return [.. central.Select((_, i) => states.Sum(state => state.Firsts[i]))];
    }
}
