using Platewright.Fit;
using Platewright.Fit.Benchmarks;
using Platewright.Geometry;
using Platewright.Machines;

// Certified fit, one part on one machine: processor time, over many parts and machines. Processor time, not the clock:
// the figures then do not depend on what else the computer does.
//   dotnet run -c Release --project bench/Platewright.Fit.Benchmarks -- FOLDER_OF_MODELS [relative gap] [brim in mm] [many]
//   dotnet run -c Release --project bench/Platewright.Fit.Benchmarks -- FIT_CASES.json 1e-8
string folder = args.Length > 0 ? args[0] : "../shared/models";
double gap = args.Length > 1 ? double.Parse(args[1]) : 1e-4;
double brim = args.Length > 2 ? double.Parse(args[2]) : 0;
Console.WriteLine($"# processors {Environment.ProcessorCount}, .NET {Environment.Version}, gap {gap:e0}, one thread");
List<(string Name, ConvexHull Hull)> parts = [.. BenchParts.FromFolder(folder), .. BenchParts.Solids()];
Machine[] machines = [.. MachineCatalog.Bundled];
var options = new FitOptions(gap);

if (Path.GetExtension(folder) == ".json")
{
    ReferenceCases.Measure(folder, gap);
    return;
}

if (args.Contains("many"))
{
    ManyParts.Measure([.. BenchParts.FromFolder(folder)]);
    return;
}

Measure(parts, machines, options, brim, print: false);
Measure(parts, machines, options, brim, print: true);

static void Measure(List<(string Name, ConvexHull Hull)> parts, Machine[] machines, FitOptions options, double brim, bool print)
{
    var fits = new List<double>();
    double prepare = 0, needs = 0;
    foreach ((string name, ConvexHull hull) in parts)
    {
        var part = new PreparedPart(new PartShape(hull, 0.003, brim));
        TimeSpan start = Environment.CpuUsage.TotalTime;
        // The first machine pays for what all machines share: counted apart.
        FitSolver.Solve(part, machines[0], new Allowance(Cut: false), options, default);
        double first = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
        prepare += first;
        double worst = 0, sum = 0;
        foreach (Machine machine in machines)
        {
            start = Environment.CpuUsage.TotalTime;
            FitSolver.Solve(part, machine, new Allowance(Cut: false), options, default);
            double ms = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
            fits.Add(ms);
            sum += ms;
            worst = Math.Max(worst, ms);
        }
        start = Environment.CpuUsage.TotalTime;
        SizeNeedSolver.Solve(part, options, default);
        double need = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
        needs += need;
        if (print)
            Console.WriteLine($"{name,-44} vertices {hull.Vertices.Length,6} faces {hull.Faces.Count,6} first {first,9:f2} ms  mean {sum / machines.Length,8:f2} ms  worst {worst,8:f2} ms  need {need,9:f2} ms");
    }
    if (!print) return;
    fits.Sort();
    Console.WriteLine($"certified fits {fits.Count}: median {fits[fits.Count / 2]:f2} ms, 99th percentile {fits[(int)(fits.Count * 0.99)]:f2} ms, most {fits[^1]:f2} ms");
    Console.WriteLine($"first fit with preparation, mean {prepare / parts.Count:f2} ms; sizes needed, mean {needs / parts.Count:f2} ms");
}
