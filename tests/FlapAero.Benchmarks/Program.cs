using System.Globalization;
using BenchmarkDotNet.Running;
using FlapAero.Benchmarks;

if (args is ["landing", string cases])
    return LandingTimes.Print(cases, Console.Out, Console.Error);
if (args is ["landing", ..])
{
    Console.Error.WriteLine("Give the table of landings: landing CASES.csv");
    return 2;
}
if (args is ["page", string page, .. string[] rest] && (rest.Length == 0 ? "1" : rest[0]) is var factor
    && double.TryParse(factor, CultureInfo.InvariantCulture, out double slower) && slower >= 1)
    return await PageTimes.PrintAsync(page, slower, Console.Out, Console.Error);
if (args is ["page", ..])
{
    Console.Error.WriteLine("Give a handout and, if wished, how many times slower the reader's machine is: page FILE.html [4]");
    return 2;
}
if (args is ["engine", string engine])
    return await EngineTimes.PrintAsync(engine, Console.Out, Console.Error);
if (args is ["engine", ..])
{
    Console.Error.WriteLine("Give the folder that handouts --engine made beside the pages: engine FOLDER");
    return 2;
}

BenchmarkSwitcher.FromAssembly(typeof(LandingBenchmarks).Assembly).Run(args);
return 0;
