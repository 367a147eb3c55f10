import type { Cycle, Machine, Study } from '../study';
import { celsius, duration, percent, watts } from '../common/format';
import { fitOn } from '../matrix/words';

/** Time s, nozzle °C, bed °C, chamber °C, power W. */
export const TIME = 0;
export const NOZZLE = 1;
export const BED = 2;
export const CHAMBER = 3;
export const POWER = 4;

/** The building that the picture shows between warm-up and cooling, s. */
const PICTURED_S = 3600;

/** Where the stages of a cycle begin and end, s. */
export function stagesOf(cycle: Cycle): { readyS: number; builtS: number; endS: number } {
  const endS = cycle.points[cycle.points.length - 1]?.[TIME] ?? 0;
  const built = cycle.release_s == null ? cycle.warm_up_s + PICTURED_S : endS - cycle.release_s;
  return { readyS: cycle.warm_up_s, builtS: Math.min(endS, Math.max(cycle.warm_up_s, built)), endS };
}

/** The machine and its cycle in one sentence. */
export function cycleTitle(machine: Machine, cycle: Cycle): string {
  const cooling = cycle.release_s == null
    ? 'and in this room never cools enough for the part to let go'
    : `and lets the part go ${duration(cycle.release_s)} after the last layer`;
  return `${machine.name} is ready for ${cycle.material} in about ${duration(cycle.warm_up_s)}, holds at ${watts(cycle.hold_w)} ${cooling}`;
}

/** Why the chamber stands open, where it does: in the words of a build that was estimated. */
export function openedWhy(study: Study, machine: Machine, cycle: Cycle): string | null {
  if (!cycle.vented) return null;
  const note = estimatesOf(study, machine, cycle).flatMap((e) => e.notes).find((n) => n.startsWith('Opened'));
  return note ?? `Opened: a closed chamber would get too warm for ${cycle.material}.`;
}

/** How far energy, and so mean power, may be off here: the widest of the builds. Null where none was estimated. */
export function powerDoubt(study: Study, machine: Machine, cycle: Cycle): string | null {
  const errors = estimatesOf(study, machine, cycle).filter((e) => e.energy_kwh).map((e) => e.energy_error);
  if (errors.length === 0) return null;
  const lowest = Math.min(...errors.map((e) => e.low));
  const highest = Math.max(...errors.map((e) => e.high));
  return `${watts(cycle.hold_w * (1 + lowest))} to ${watts(cycle.hold_w * (1 + highest))} `
    + `(−${percent(-lowest)} to +${percent(highest)}, the 95 % range of this model's energy)`;
}

const estimatesOf = (study: Study, machine: Machine, cycle: Cycle) =>
  study.parts.flatMap((p) => fitOn(study, p, machine)?.estimate ?? []).filter((e) => e.material === cycle.material);

const ROWS = 24;

/** About two dozen moments, with the ends of the stages among them. */
export function momentsOf(cycle: Cycle): string[][] {
  const { points } = cycle;
  const { readyS, builtS } = stagesOf(cycle);
  const every = Math.max(1, Math.ceil(points.length / ROWS));
  const passes = (i: number, s: number) => points[i][TIME]! >= s && (i === 0 || points[i - 1][TIME]! < s);
  const atStage = (i: number) => passes(i, readyS) || passes(i, builtS);
  const said = (v: number | null, unit: (v: number) => string) => (v == null ? 'none' : unit(v));
  const shown = points.filter((_, i) => i % every === 0 || i === points.length - 1 || atStage(i));
  return shown.map((p) => [
    duration(p[TIME]!), p[TIME]! < readyS ? 'warm-up' : p[TIME]! < builtS ? 'building' : 'cooling',
    said(p[NOZZLE], celsius), said(p[BED], celsius), said(p[CHAMBER], celsius), said(p[POWER], watts),
  ]);
}
