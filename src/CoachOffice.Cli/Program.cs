using CoachOffice.Cli;

await using var output = Console.OpenStandardOutput();
return CommandLine.Run(args, output, Console.Error);
