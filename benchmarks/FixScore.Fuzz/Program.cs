using FixScore.Fuzz;
using FixScore.Fuzz.Targets;

if (FuzzArguments.Of(args) is not { } asked)
{
    Console.Error.WriteLine(FuzzArguments.Usage);
    return 2;
}
Environment.SetEnvironmentVariable("FIXSCORE_DEBUG", "1"); // What the tool would call a bug comes here as it was thrown.
return asked.Targets.Count(name => !new Fuzzer(Target.Named(name), asked).Run()) == 0 ? 0 : 1;
