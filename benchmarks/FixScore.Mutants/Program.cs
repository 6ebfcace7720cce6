using FixScore.Mutants;
using FixScore.Mutants.Trying;

if (WorkerTask.Of(args) is { } task)
{
    new Worker(task).Run();
    return 0;
}
if (MutantArguments.Of(args) is not { } asked)
{
    Console.Error.WriteLine(MutantArguments.Usage);
    return 2;
}
var root = Root();
var making = new Making(asked.Room, root, asked.Out);
making.Run();
var mutants = MutationReport.Read(making.Report);
var verdicts = mutants.ToDictionary(mutant => mutant.Id, _ => Verdict.NotReached);
foreach (var tests in asked.Room.Tests)
{
    var hall = Hall.Of(tests, making.Assembly, root, Path.Combine(asked.Out, "tests"));
    int[] left = [.. mutants.Select(mutant => mutant.Id).Where(id => verdicts[id].IsLeft())];
    foreach (var (mutant, verdict) in new Supervisor(asked, hall, Path.Combine(asked.Out, "found", tests)).Run(left))
        if (verdicts[mutant] == Verdict.NotReached || !verdict.IsLeft()) verdicts[mutant] = verdict;
}
Console.Write(Summary.Of(mutants, verdicts));
return 0;

static string Root()
{
    var folder = new DirectoryInfo(Environment.CurrentDirectory);
    while (!File.Exists(Path.Combine(folder.FullName, "FixScore.sln"))) folder = folder.Parent ?? throw new DirectoryNotFoundException("Run it inside the repository.");
    return folder.FullName;
}
