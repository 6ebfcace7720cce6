using FixScore.Records;

namespace FixScore.Pairing.Tests;

/// <summary>The trials of one context by definition: every set of parts is tried against every statement.</summary>
/// <remarks>Sets of parts and of trials are bit masks. Shares no code with what it checks.</remarks>
sealed class BruteForce
{
    sealed record Statement(int Trial, int[][] Controls, Func<int, bool> Holds, FunctionCheck? Flag);

    readonly TeardownRecord record;
    readonly SwapTrial[] trials;
    readonly List<Statement> statements = [];

    public BruteForce(TeardownRecord record, IEnumerable<SwapTrial> trials)
    {
        this.record = record;
        this.trials = [.. trials];
        var board = record.Parts.AsArray().FirstOrDefault(part => part.Role == "mainboard");
        Parts = [.. record.Parts.Where(part => !part.Inert && !(board is not null && AreTogether(board.Id, part.Id))).Select(part => part.Id)];
        for (var i = 0; i < this.trials.Length; i++) Read(i);
    }

    public string[] Parts { get; }

    public int ForeignAnywhere { get; private set; }

    public int MaskOf(IEnumerable<string> parts) => parts.Sum(part => 1 << Array.IndexOf(Parts, part));

    /// <summary>All sets of parts that explain a set of trials, given what all trials together say about faults of hosts.</summary>
    public IEnumerable<int> Explanations(int ofTrials = -1)
    {
        var active = statements.Where(each => IsActive(each, ofTrials)).ToArray();
        return Enumerable.Range(0, 1 << Parts.Length).Where(tied => active.All(each => each.Holds(tied)));
    }

    /// <summary>The results that a flag proves for parts: the flag and the clean trials alone leave no explanation without them.</summary>
    public IEnumerable<FunctionCheck> Proofs(int parts, int ofTrials = -1) =>
        from flag in statements
        where flag.Flag is not null && IsActive(flag, ofTrials)
        let said = statements.Where(each => each == flag || (each.Flag is null && IsActive(each, ofTrials))).ToArray()
        where Enumerable.Range(0, 1 << Parts.Length).Where(tied => said.All(each => each.Holds(tied))).All(tied => (tied & parts) != 0)
        select flag.Flag;

    /// <summary>How well all statements go with a set of parts, when checks can mislead.</summary>
    public double Likelihood(int tied, NoiseModel noise)
    {
        var product = 1.0;
        foreach (var each in statements)
        {
            var rates = each.Flag is not null ? [noise.Of(each.Flag.Function)] : trials[each.Trial].Checks.Where(check => Kind(check) == '+').Select(check => noise.Of(check.Function)).ToArray();
            var (missed, stray) = ((double)rates.Max(rate => rate.FalseClean), (double)rates.Max(rate => rate.FalseFlag));
            product *= (each.Flag is not null, each.Holds(tied)) switch
            {
                (true, true) => 1 - missed,
                (true, false) => stray,
                (false, true) => 1 - stray,
                (false, false) => missed,
            };
        }
        return product;
    }

    public int TrialMask(IEnumerable<string> ids) => ids.Sum(id => 1 << Array.FindIndex(trials, trial => trial.Id == id));

    public string[] SmallestContradictions()
    {
        var sets = Enumerable.Range(0, 1 << trials.Length).GroupBy(set => int.PopCount(set)).OrderBy(sets => sets.Key);
        var smallest = sets.Select(sets => sets.Where(set => !Explanations(set).Any()).ToArray()).FirstOrDefault(sets => sets.Length > 0, []);
        return [.. smallest.Select(set => trials.Where((_, i) => (set >> i & 1) != 0).Select(trial => trial.Id).Joined()).Order(StringComparer.Ordinal)];
    }

    static bool IsActive(Statement statement, int ofTrials) =>
        (ofTrials >> statement.Trial & 1) != 0 && statement.Controls.All(any => any.Any(control => (ofTrials >> control & 1) != 0));

    void Read(int number)
    {
        var trial = trials[number];
        var foreign = Foreign(trial);
        ForeignAnywhere |= foreign;
        if (foreign == 0) return;
        var clean = false;
        var dirty = false;
        var spared = 0;
        var controls = new List<int[]>();
        foreach (var check in trial.Checks)
        {
            var blamed = foreign & (check.Implicates.IsRecorded ? MaskOf(check.Implicates.Where(Parts.Contains).Distinct()) : -1);
            int[] faulty = [.. Enumerable.Range(0, trials.Length).Where(i => IsFault(trials[i], trial.Host, check.Function))];
            if (Kind(check) == '+') clean = true;
            else if (Kind(check) == '?') spared |= blamed;
            else if (faulty.Length > 0)
            {
                spared |= blamed;
                controls.Add(faulty);
            }
            else
            {
                dirty = true;
                statements.Add(new(number, [], tied => (tied & blamed) != 0, check));
            }
        }
        if (clean && !dirty) statements.Add(new(number, [.. controls], tied => (tied & foreign & ~spared) == 0, null));
    }

    bool IsFault(SwapTrial control, string host, string function) =>
        Foreign(control) == 0 && control.Host == host && control.Checks.Any(check => check.Function == function && Kind(check) == '-');

    static char Kind(FunctionCheck check)
    {
        var words = check.Result.Stated.Distinct().ToArray();
        if (words is [SwapResult.Works]) return '+';
        return words.Contains(SwapResult.Works) || words.Contains(SwapResult.Untested) ? '?' : '-';
    }

    int Foreign(SwapTrial trial)
    {
        var board = record.Parts.AsArray().FirstOrDefault(part => part.Role == "mainboard");
        var reference = board is null ? trial.Host : UnitOf(trial, board.Id);
        return MaskOf(Parts.Where(part => UnitOf(trial, part) != reference));
    }

    string UnitOf(SwapTrial trial, string part) =>
        trial.Installed.FirstOrDefault(named => AreTogether(named.Part, part))?.Unit ?? trial.Host;

    public bool AreTogether(string one, string other)
    {
        var reached = new List<string> { one };
        for (var i = 0; i < reached.Count; i++)
            foreach (var joint in record.Joints.Where(joint => joint.Integral && joint.Joins.Contains(reached[i])))
                reached.AddRange(joint.Joins.Where(part => !reached.Contains(part)).ToArray());
        return reached.Contains(other);
    }
}
