import { mm, missing, money } from '../common/format';
import type { Machine, Study } from '../study';

/** What lies along the line: the edge of a cube-shaped machine, mm, or the price of the study's machines. */
export interface Axis {
  kind: 'size' | 'price';
  /** Where a machine stands; null where that is not known. */
  of: (machine: Machine) => number | null;
  format: (at: number) => string;
  /** "12.0 mm short". */
  short: (by: number) => string;
  /** "needs 212 mm". */
  needs: (at: number) => string;
  /** Where the handle must stand to reach a need. */
  reach: (at: number) => number;
  /** Of the arrow keys and of the page keys. */
  step: number;
  page: number;
  /** In words, for the axis and the handle. */
  says: string;
  handle: string;
  file: (at: number) => string;
}

export const sizeAxis: Axis = {
  kind: 'size',
  of: (machine) => machine.edge_mm,
  format: mm,
  short: (by) => `${missing(by)} short`,
  needs: (at) => `needs ${mm(at > 10 ? Math.ceil(at) : at)}`,
  reach: Math.ceil,
  step: 1,
  page: 25,
  says: 'Edge of a cube-shaped machine, mm',
  handle: 'Edge of the imagined machine',
  file: (at) => `size-line-${Math.round(at)}-mm`,
};

export const priceOf = (study: Study, machine: Machine): number | null =>
  study.sizing?.machines.find((m) => m.machine === machine.id)?.price ?? null;

const PRICE_STEPS = 200;
const PAGES = 10;

export function priceAxis(study: Study): Axis | null {
  const { sizing } = study;
  const most = Math.max(0, ...study.machines.map((m) => priceOf(study, m) ?? 0));
  if (!sizing || most <= 0) return null;
  const format = (at: number) => money(at, sizing.currency);
  const step = Math.max(1, niceBelow(most / PRICE_STEPS));
  return {
    kind: 'price',
    of: (machine) => priceOf(study, machine),
    format,
    short: (by) => `${format(by)} dearer`,
    needs: (at) => `from ${format(at)}`,
    reach: Math.ceil,
    step,
    page: step * PAGES,
    says: `Price of one of the study's machines, ${sizing.currency}`,
    handle: 'Most that one machine may cost',
    file: (at) => `price-line-${Math.round(at)}-${sizing.currency}`,
  };
}

/** The largest of 1, 2, 5, 10, 20 … that is not more. */
export function niceBelow(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return [5, 2, 1].map((n) => n * power).find((n) => n <= value * (1 + 1e-9)) ?? power;
}
