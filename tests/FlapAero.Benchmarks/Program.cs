using BenchmarkDotNet.Running;
using FlapAero.Benchmarks;

if (args is ["landing", string cases])
    return LandingTimes.Print(cases, Console.Out, Console.Error);
if (args is ["landing", ..])
{
    Console.Error.WriteLine("Give the table of landings: landing CASES.csv");
    return 2;
}
if (args is ["page", string page])
    return await PageTimes.PrintAsync(page, Console.Out, Console.Error);
if (args is ["page", ..])
{
    Console.Error.WriteLine("Give a handout: page FILE.html");
    return 2;
}

BenchmarkSwitcher.FromAssembly(typeof(LandingBenchmarks).Assembly).Run(args);
return 0;
