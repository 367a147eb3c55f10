import type { Estimate, Machine, Part, Study } from '../study';
import { fitOn } from '../matrix/words';
import { high, low } from './comparing';

/** What a body of work takes on one machine, each part in its quantity, one build for each copy. */
export interface Work {
  machine: Machine;
  parts: number;
  timeS: number;
  lowS: number;
  highS: number;
  /** Warm-up and release, s. */
  idleS: number;
  massG: number;
  /** Null where no part has an energy. */
  energy: { kwh: number; low: number; high: number } | null;
  peakW: number | null;
}

const madeOn = (study: Study, part: Part, machine: Machine): Estimate | null => {
  const fit = fitOn(study, part, machine);
  return fit?.can_make ? fit.estimate ?? null : null;
};

/** All that each machine makes: as the study says it; the range of the energy is that of its parts together. */
export function ownWork(study: Study): Work[] {
  return study.machines.flatMap((machine) => {
    const b = machine.builds;
    if (!b) return [];
    const sum = summed(study, machine, study.parts);
    const factor = b.energy_kwh != null && sum.energy ? b.energy_kwh / sum.energy.kwh : 0;
    const energy = factor > 0 && sum.energy
      ? { kwh: factor * sum.energy.kwh, low: factor * sum.energy.low, high: factor * sum.energy.high } : null;
    return [{
      machine, parts: b.parts, timeS: b.time_s, lowS: b.low_time_s, highS: b.high_time_s,
      idleS: b.warm_up_share * b.time_s, massG: b.mass_g, energy, peakW: b.peak_power_w ?? null,
    }];
  });
}

/** Only the parts that all of these machines make: the same work on each. */
export function sameWork(study: Study, machines: readonly Machine[]): Work[] {
  const parts = study.parts.filter((p) => machines.every((m) => madeOn(study, p, m)));
  return parts.length === 0 ? [] : machines.map((m) => summed(study, m, parts));
}

function summed(study: Study, machine: Machine, parts: readonly Part[]): Work {
  const work: Work = { machine, parts: 0, timeS: 0, lowS: 0, highS: 0, idleS: 0, massG: 0, energy: null, peakW: null };
  for (const part of parts) {
    const e = madeOn(study, part, machine);
    if (!e) continue;
    const copies = part.quantity;
    const t = e.time_s;
    work.parts += copies;
    work.timeS += copies * t.total;
    work.lowS += copies * low(t.total, e.time_error);
    work.highS += copies * high(t.total, e.time_error);
    work.idleS += copies * (t.warm_up + t.release);
    work.massG += copies * e.mass_g;
    if (e.energy_kwh == null) continue;
    const kwh = copies * e.energy_kwh.total;
    const was = work.energy ?? { kwh: 0, low: 0, high: 0 };
    work.energy = {
      kwh: was.kwh + kwh, low: was.low + low(kwh, e.energy_error), high: was.high + high(kwh, e.energy_error),
    };
    if (e.peak_power_w != null) work.peakW = Math.max(work.peakW ?? 0, e.peak_power_w);
  }
  return work;
}
