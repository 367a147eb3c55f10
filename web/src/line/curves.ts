import type { Heat, Study } from '../study';
import { workOf } from '../common/parts';
import type { Axis } from './axis';

/** What the upright axis is a share of. */
export type Counted = 'projects' | 'hours' | 'money';

/** Projects, or hours or money in a month, as a share of all with its interval. */
export interface Amount {
  count: number;
  share: number;
  low: number;
  high: number;
}

/** From `at` on, until the next step. */
export interface Step {
  at: number;
  fits: Amount;
  with_compromise: Amount;
  /** On the price line: ids of the machines that take so much. */
  fits_machine?: string;
  machine?: string;
}

export interface Curve {
  kind: 'fits' | 'can_make';
  heat: Heat | null;
  like: readonly string[];
  steps: Step[];
  /** All the work: projects, or hours or money in a month. */
  total: number;
  /** Projects of which nothing is known. */
  leftOut: number;
}

/** The curves of a study for a choice of axes; all were computed with it. */
export function curvesOf(study: Study, counted: Counted, axis: Axis): Curve[] {
  if (axis.kind === 'price')
    return (study.sizing?.price_curves ?? [])
      .filter((c) => c.measure === counted)
      .map((c) => ({
        kind: c.kind as Curve['kind'],
        heat: null,
        like: [],
        total: c.total,
        leftOut: c.left_out,
        steps: c.steps.map((s) => ({ ...s, at: s.price })),
      }));
  if (counted === 'projects')
    return study.curves.map((c) => ({
      kind: c.kind as Curve['kind'],
      heat: c.heat ?? null,
      like: c.like,
      total: workOf(study).length,
      leftOut: 0,
      steps: c.steps.map((s) => ({ ...s, at: s.edge_mm })),
    }));
  return (study.sizing?.curves ?? [])
    .filter((c) => c.measure === counted)
    .map((c) => ({
      kind: c.kind as Curve['kind'],
      heat: c.heat ?? null,
      like: c.like,
      total: c.total,
      leftOut: c.left_out,
      steps: c.steps.map((s) => ({ ...s, at: s.edge_mm })),
    }));
}

/** Whether anything is known to count. */
export const isKnown = (study: Study, counted: Counted) =>
  counted === 'projects' || (study.sizing?.curves ?? []).some((c) => c.measure === counted && c.total > 0);
