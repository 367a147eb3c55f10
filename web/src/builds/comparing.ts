import type { Estimate, Machine, ModelError, Part, PartFit, Study } from '../study';
import { duration, percent } from '../common/format';
import { fitOn, partWords } from '../matrix/words';

/** One machine's build of a part. */
export interface Taken {
  machine: Machine;
  fit: PartFit;
  estimate: Estimate;
}

/** A machine that does not make a part, and why in a few words. */
export interface Refused {
  machine: Machine;
  why: string;
}

export const low = (value: number, error: ModelError) => Math.max(0, value * (1 + error.low));
export const high = (value: number, error: ModelError) => value * (1 + error.high);

/** The machines that make it whole, quickest first, and the others. */
export function sideBySide(study: Study, part: Part): { taken: Taken[]; refused: Refused[] } {
  const taken: Taken[] = [];
  const refused: Refused[] = [];
  for (const machine of study.machines) {
    const fit = fitOn(study, part, machine);
    if (fit?.can_make && fit.estimate) taken.push({ machine, fit, estimate: fit.estimate });
    else refused.push({ machine, why: whyNot(study, part, machine, fit) });
  }
  return { taken: taken.sort((a, b) => a.estimate.time_s.total - b.estimate.time_s.total), refused };
}

function whyNot(study: Study, part: Part, machine: Machine, fit: PartFit | undefined): string {
  const words = partWords(study, part, machine);
  if (!fit) return words.word;
  if (fit.counts_as === 'no') return `does not fit${words.word === 'no' ? '' : `: ${words.word}`}`;
  if (!fit.can_make) return `fits, but ${words.note === 'cannot make' || !words.note ? 'cannot be made there' : words.note}`;
  return fit.verdict === 'in_pieces' ? `only ${words.word}: builds of pieces are not estimated` : 'not estimated';
}

/** The quickest machine against the chosen one, or against the next. */
export function comparison(taken: readonly Taken[], chosen: Machine): string {
  if (taken.length === 0) return 'No machine of the study makes it whole, so there is no build to estimate.';
  const [first] = taken;
  const t = first.estimate.time_s;
  const idle = `warm-up and release are ${percent((t.warm_up + t.release) / t.total)} of it`;
  const other = taken.slice(1).find((e) => e.machine === chosen) ?? taken[1];
  const one = `${duration(t.total)} on ${first.machine.name}`;
  if (!other) return `${one}, the only machine that makes it; ${idle}.`;
  const both = `${one}, ${duration(other.estimate.time_s.total)} on ${other.machine.name}`;
  const less = 1 - t.total / other.estimate.time_s.total;
  const better = less < LEAST_DIFFERENCE ? 'no difference to speak of' : `the first takes ${percent(less)} less`;
  return `${both}: ${better}; ${idle}. ${doubt(first, other)}`;
}

const LEAST_DIFFERENCE = 0.01;

function doubt(first: Taken, other: Taken): string {
  const most = high(first.estimate.time_s.total, first.estimate.time_error);
  return most >= low(other.estimate.time_s.total, other.estimate.time_error)
    ? 'The 95 % ranges overlap, so the order could be the other way round.'
    : 'The 95 % ranges do not overlap.';
}
