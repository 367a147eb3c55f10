// Best of five, in seconds: dotnet run -c Release --project bench/Platewright.Geometry.Benchmarks [hull | mesh]
using System.Diagnostics;
using System.Runtime.InteropServices;
using Platewright.Geometry.Benchmarks;

Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores");
if (!args.Contains("hull")) MeshBenchmarks.Run();
if (!args.Contains("mesh")) HullBenchmarks.Run();

namespace Platewright.Geometry.Benchmarks
{
    internal static class Clock
    {
        public static void Best(string name, Func<string> work)
        {
            double best = double.PositiveInfinity;
            string answer = "";
            for (int run = 0; run < 5; run++)
            {
                var watch = Stopwatch.StartNew();
                answer = work();
                best = Math.Min(best, watch.Elapsed.TotalSeconds);
            }
            Console.WriteLine($"{name,-48} {best,9:F4} s   {answer}");
        }
    }
}
