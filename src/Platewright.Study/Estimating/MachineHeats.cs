using System.Collections.Concurrent;
using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Study.Estimating;

/// <summary>The heat of each machine with each material, made once. Safe for use by several threads.</summary>
internal sealed class MachineHeats
{
    private readonly ConcurrentDictionary<(string Machine, Material Material), MachineHeat> _heats = [];

    public MachineHeat Of(Machine machine, Material material) =>
        _heats.GetOrAdd((machine.Id, material), _ => new MachineHeat(machine, material));
}
