using FixScore.Pairing.Ties;
using FixScore.Records;

namespace FixScore.Pairing.Tests.Ties;

/// <summary>The trials of one context by definition: every set of ties is tried against every statement.</summary>
/// <remarks>Sets of ties are bit masks. Shares no code with what it checks.</remarks>
sealed class TieBruteForce
{
    sealed record Statement(int Trial, int[][] Controls, Func<int, bool> Holds);

    readonly TeardownRecord record;
    readonly SwapTrial[] trials;
    readonly List<Statement> statements = [];

    public TieBruteForce(TeardownRecord record, IEnumerable<SwapTrial> trials)
    {
        this.record = record;
        this.trials = [.. trials];
        Ties = [.. AllTies(record)];
        for (var i = 0; i < this.trials.Length; i++) Read(i);
        BrokenAnywhere = this.trials.Select(trial => Broken(trial)).Aggregate(0, (all, broken) => all | broken);
    }

    public Tie[] Ties { get; }

    public int BrokenAnywhere { get; }

    public int Excluded => Enumerable.Range(0, Ties.Length).Where(i => Explanations().All(real => (real >> i & 1) == 0)).Sum(i => 1 << i);

    public int MaskOf(Tie tie) => 1 << Array.IndexOf(Ties, tie);

    /// <summary>All ties between the groups of a tie's ends.</summary>
    public int GroupMaskOf(Tie tie) => Mask(other =>
        (tie.With is null && other.With is null && Together(record, tie.Part, other.Part))
        || (tie.With is not null && other.With is not null
            && ((Together(record, tie.Part, other.Part) && Together(record, tie.With, other.With))
                || (Together(record, tie.Part, other.With) && Together(record, tie.With, other.Part)))));

    public int TrialMask(IEnumerable<string> ids) => ids.Sum(id => 1 << Array.FindIndex(trials, trial => trial.Id == id));

    /// <summary>All sets of ties, among <paramref name="allowed"/>, that explain a set of trials.</summary>
    public IEnumerable<int> Explanations(int ofTrials = -1, int allowed = -1)
    {
        var active = statements
            .Where(each => (ofTrials >> each.Trial & 1) != 0 && each.Controls.All(any => any.Any(control => (ofTrials >> control & 1) != 0)))
            .ToArray();
        return Enumerable.Range(0, 1 << Ties.Length).Where(real => (real & ~allowed) == 0 && active.All(each => each.Holds(real)));
    }

    /// <summary>Whether every statement that forbids nothing more is as true with one tie as with another in its place.</summary>
    public bool Alike(Tie one, Tie other)
    {
        var (a, b, excluded) = (MaskOf(one), MaskOf(other), Excluded);
        return Enumerable.Range(0, 1 << Ties.Length)
            .Where(real => (real & excluded) == 0 && (real & a) != 0 && (real & b) == 0)
            .All(real => statements.All(each => each.Holds(real) == each.Holds(real ^ a ^ b)));
    }

    public static IEnumerable<Tie> AllTies(TeardownRecord record)
    {
        var board = record.Parts.AsArray().FirstOrDefault(part => part.Role == "mainboard")?.Id;
        string[] parts = [.. record.Parts.Where(part => !part.Inert && !(board is not null && Together(record, board, part.Id))).Select(part => part.Id)];
        foreach (var part in parts) yield return new(part);
        for (var i = 0; i < parts.Length; i++)
            for (var j = i + 1; j < parts.Length; j++)
                if (!Together(record, parts[i], parts[j])) yield return new(parts[i], parts[j]);
    }

    public static bool Breaks(TeardownRecord record, SwapTrial trial, Tie tie)
    {
        var board = record.Parts.AsArray().FirstOrDefault(part => part.Role == "mainboard")?.Id;
        var other = tie.With ?? board;
        return UnitOf(record, trial, tie.Part) != (other is null ? trial.Host : UnitOf(record, trial, other));
    }

    public static bool MayBlame(FunctionCheck check, Tie tie) =>
        !check.Implicates.IsRecorded || check.Implicates.Any(part => part == tie.Part || part == tie.With);

    void Read(int number)
    {
        var trial = trials[number];
        var broken = Broken(trial);
        if (broken == 0) return;
        var (clean, dirty, spared, controls) = (false, false, 0, new List<int[]>());
        foreach (var check in trial.Checks)
        {
            var blamed = broken & Mask(tie => MayBlame(check, tie));
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
                statements.Add(new(number, [], real => (real & blamed) != 0));
            }
        }
        if (clean && !dirty) statements.Add(new(number, [.. controls], real => (real & broken & ~spared) == 0));
    }

    int Broken(SwapTrial trial) => Mask(tie => Breaks(record, trial, tie));

    int Mask(Func<Tie, bool> takes) => Enumerable.Range(0, Ties.Length).Where(i => takes(Ties[i])).Sum(i => 1 << i);

    bool IsFault(SwapTrial control, string host, string function) =>
        Broken(control) == 0 && control.Host == host && control.Checks.Any(check => check.Function == function && Kind(check) == '-');

    static char Kind(FunctionCheck check)
    {
        var words = check.Result.Stated.Distinct().ToArray();
        if (words is [SwapResult.Works]) return '+';
        return words.Contains(SwapResult.Works) || words.Contains(SwapResult.Untested) ? '?' : '-';
    }

    static string UnitOf(TeardownRecord record, SwapTrial trial, string part) =>
        trial.Installed.FirstOrDefault(named => Together(record, named.Part, part))?.Unit ?? trial.Host;

    static bool Together(TeardownRecord record, string one, string other)
    {
        var reached = new List<string> { one };
        for (var i = 0; i < reached.Count; i++)
            foreach (var joint in record.Joints.Where(joint => joint.Integral && joint.Joins.Contains(reached[i])))
                reached.AddRange(joint.Joins.Where(part => !reached.Contains(part)).ToArray());
        return reached.Contains(other);
    }
}
