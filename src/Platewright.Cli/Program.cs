using Platewright.Cli;

using Interruption interruption = new();
return CommandLine.Run(args, Screen.OfConsole(), interruption.Token);
