using System.Diagnostics;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Benchmarks;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;

// Mixes of machines: processor time on one thread.
//   dotnet run -c Release --project bench/Platewright.Sizing.Benchmarks -- [parts] [kinds] [bracket | exact | whole]
int parts = args.Length > 0 ? int.Parse(args[0]) : 10_000;
int kinds = args.Length > 1 ? int.Parse(args[1]) : 20;
MixEffort? effort = args.Contains("bracket") ? new(ExactAssignments: 0)
    : args.Contains("exact") ? new(ExactAssignments: int.MaxValue)
    : null;
if (args.Contains("whole"))
{
    Whole();
    return;
}
Console.WriteLine($"# processors {Environment.ProcessorCount}, .NET {Environment.Version}, {parts} parts, {kinds} kinds");
Solve("warm-up", InventedWork.Of(200, 5, 1, new()));
Solve("all of it", InventedWork.Of(parts, kinds, 1, new()));
Solve("90 %", InventedWork.Of(parts, kinds, 0.9, new()));
Solve("50 %", InventedWork.Of(parts, kinds, 0.5, new()));
Solve("90 %, floor and circuit", InventedWork.Of(parts, kinds, 0.9, new(FloorM2: 8, PowerW: 14000)));
Solve("90 %, 4 machines", InventedWork.Of(parts, kinds, 0.9, new(Machines: 4)));
TimeSpan started = Environment.CpuUsage.TotalTime;
MixFront front = MixFront.Of(InventedWork.Of(parts, kinds, 1, new()), effort);
Console.WriteLine(
    $"front {(Environment.CpuUsage.TotalTime - started).TotalSeconds:f2} s  {front.Mixes.Length} of {front.NonDominated} mixes, "
    + $"sets of up to {front.KindsTogether} kinds");
Whole();

void Whole()
{
    SizingCase work = InventedCase.Of(parts, kinds);
    TimeSpan begun = Environment.CpuUsage.TotalTime;
    Stopwatch clock = Stopwatch.StartNew();
    SizingAnswer whole = SizingAnswer.Of(work, CancellationToken.None);
    Console.WriteLine(
        $"whole sizing {(Environment.CpuUsage.TotalTime - begun).TotalSeconds:f2} s of two processors, {clock.Elapsed.TotalSeconds:f2} s in all  {whole.Mix!.Answer.Status}, "
        + $"gap {whole.Mix.Answer.RelativeGap:p2}, {whole.Mix.Front.Mixes.Length} mixes on the front");
}

void Solve(string what, MixProblem problem)
{
    TimeSpan start = Environment.CpuUsage.TotalTime;
    MixAnswer answer = Mix.Solve(problem, effort);
    double seconds = (Environment.CpuUsage.TotalTime - start).TotalSeconds;
    Console.WriteLine(
        $"{what,-26} {seconds,6:f2} s  {answer.Status}, {answer.Stop}, cost {answer.Mix?.MonthlyCost:f2}, "
        + $"bound {answer.CostBound:f2}, "
        + $"gap {answer.RelativeGap:p3}, covered {answer.Mix?.CoveredShare:p2} of at most {answer.ReachBound:p2}, "
        + $"counts {string.Join(' ', answer.Mix?.Counts ?? [])}, in the way: {string.Join(' ', answer.Blocking)}");
}
