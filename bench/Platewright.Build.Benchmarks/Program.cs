using Platewright.Build.Benchmarks;

// Speed of the stages of a build estimate.
//   dotnet run -c Release --project bench/Platewright.Build.Benchmarks [heat | motion | FOLDER WITH OPEN MESHES]
Console.WriteLine($"# processors {Environment.ProcessorCount}, .NET {Environment.Version}");
if (args is not ["heat"])
{
    if (args is not ["motion"]) EstimateBenchmarks.Measure(args.Length > 0 ? args[0] : "../shared/models");
    MotionBenchmarks.Measure();
    ProgramBenchmarks.Measure();
}
if (args is not ["motion"]) HeatBenchmarks.Measure();
