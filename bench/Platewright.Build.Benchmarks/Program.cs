using Platewright.Build.Benchmarks;

// Speed of the stages of a build estimate.
//   dotnet run -c Release --project bench/Platewright.Build.Benchmarks
Console.WriteLine($"# processors {Environment.ProcessorCount}, .NET {Environment.Version}");
if (args is not ["heat"]) MotionBenchmarks.Measure();
HeatBenchmarks.Measure();
