import { count } from '../common/format';
import { workOf } from '../common/parts';
import type { Study } from '../study';
import { niceBelow, type Axis } from './axis';
import { compromiseMm } from './question';

/** The stretch of machine sizes, mm, or of prices that the line shows. */
export interface Domain {
  from: number;
  to: number;
}

export interface Tick {
  at: number;
  length: 'short' | 'middle' | 'long';
  label: string | null;
}

const RULE_STEP_MM = 50;
/** Work far larger than any machine would squeeze the rest of the line. */
const BEYOND_LARGEST_MACHINE = 2;
const BELOW_SMALLEST_MACHINE = 0.6;
const ROOM_AT_THE_END = 1.06;

export const domainOf = (study: Study, axis: Axis): Domain =>
  axis.kind === 'price' ? prices(study, axis) : sizes(study);

function prices(study: Study, axis: Axis): Domain {
  const most = Math.max(...study.machines.map((m) => axis.of(m) ?? 0));
  const step = niceBelow(most / 5);
  return { from: 0, to: Math.ceil((most * ROOM_AT_THE_END) / step) * step };
}

function sizes(study: Study): Domain {
  const edges = study.machines.map((m) => m.edge_mm);
  const needs = workOf(study).flatMap((p) => (p.need ? [compromiseMm(p.need), p.need.cube_turned_mm] : []));
  const largest = edges.length > 0 ? Math.max(...edges) * BEYOND_LARGEST_MACHINE : Infinity;
  const shown = [...edges, ...needs.filter((n) => n <= largest)];
  if (shown.length === 0) return { from: 0, to: 500 };
  // Work far smaller than the smallest machine says nothing about machines: the line begins below that one.
  const least = Math.max(0.8 * Math.min(...shown), edges.length > 0 ? BELOW_SMALLEST_MACHINE * Math.min(...edges) : 0);
  const from = Math.floor(least / RULE_STEP_MM) * RULE_STEP_MM;
  const to = Math.ceil((Math.max(...shown) * ROOM_AT_THE_END) / RULE_STEP_MM) * RULE_STEP_MM;
  return { from, to: Math.max(to, from + 2 * RULE_STEP_MM) };
}

/** Marks of the rule: every small step, longer ones now and then, a number where there is room. */
export function ruleTicks(d: Domain, widthPx: number, axis: Axis): Tick[] {
  const pxPerUnit = widthPx / (d.to - d.from);
  const { small, middle, label } = axis.kind === 'price' ? priceSteps(pxPerUnit) : sizeSteps(pxPerUnit);
  const ticks: Tick[] = [];
  for (let v = Math.ceil(d.from / small) * small; v <= d.to; v += small) {
    const length = v % label === 0 ? 'long' : v % middle === 0 ? 'middle' : 'short';
    ticks.push({ at: v, length, label: v % label === 0 ? (axis.kind === 'price' ? count(v) : `${v}`) : null });
  }
  return ticks;
}

const sizeSteps = (pxPerMm: number) => ({
  small: [5, 10, 50].find((s) => s * pxPerMm >= 4.5) ?? 100,
  middle: RULE_STEP_MM,
  label: [50, 100, 200, 500].find((s) => s * pxPerMm >= 44) ?? 1000,
});

function priceSteps(pxPerUnit: number) {
  const least = 56 / pxPerUnit;
  const below = niceBelow(least);
  const label = Math.max(
    10,
    [1, 2, 2.5, 5, 10].map((n) => n * 10 ** Math.floor(Math.log10(below))).find((n) => n >= least) ?? below * 10,
  );
  return { small: Math.max(1, label / 10), middle: label / 2, label };
}
