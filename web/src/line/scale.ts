import { workOf } from '../common/parts';
import type { Study } from '../study';
import { compromiseMm } from './question';

/** The stretch of machine sizes that the line shows, mm. */
export interface Domain {
  from: number;
  to: number;
}

const RULE_STEP_MM = 50;
/** Work far larger than any machine would squeeze the rest of the line. */
const BEYOND_LARGEST_MACHINE = 2;
const BELOW_SMALLEST_MACHINE = 0.6;

export function domainOf(study: Study): Domain {
  const edges = study.machines.map((m) => m.edge_mm);
  const needs = workOf(study).flatMap((p) => (p.need ? [compromiseMm(p.need), p.need.cube_turned_mm] : []));
  const largest = edges.length > 0 ? Math.max(...edges) * BEYOND_LARGEST_MACHINE : Infinity;
  const shown = [...edges, ...needs.filter((n) => n <= largest)];
  if (shown.length === 0) return { from: 0, to: 500 };
  // Work far smaller than the smallest machine says nothing about machines: the line begins below that one.
  const least = Math.max(0.8 * Math.min(...shown), edges.length > 0 ? BELOW_SMALLEST_MACHINE * Math.min(...edges) : 0);
  const from = Math.floor(least / RULE_STEP_MM) * RULE_STEP_MM;
  const to = Math.ceil((Math.max(...shown) * 1.06) / RULE_STEP_MM) * RULE_STEP_MM;
  return { from, to: Math.max(to, from + 2 * RULE_STEP_MM) };
}

/** Marks of the rule: every small step, longer ones every 50 mm, a number where there is room. */
export function ruleTicks(d: Domain, widthPx: number): { mm: number; length: 'short' | 'middle' | 'long'; label: boolean }[] {
  const pxPerMm = widthPx / (d.to - d.from);
  const small = [5, 10, 50].find((s) => s * pxPerMm >= 4.5) ?? 100;
  const labelEvery = [50, 100, 200, 500].find((s) => s * pxPerMm >= 44) ?? 1000;
  const ticks = [];
  for (let v = Math.ceil(d.from / small) * small; v <= d.to; v += small) {
    const length = v % labelEvery === 0 ? 'long' : v % RULE_STEP_MM === 0 ? 'middle' : 'short';
    ticks.push({ mm: v, length, label: v % labelEvery === 0 } as const);
  }
  return ticks;
}
