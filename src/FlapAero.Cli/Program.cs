using FlapAero.Cli;

return await CommandLine.RunAsync(args, Console.Out, Console.Error, Environment.CurrentDirectory, CancellationToken.None);
