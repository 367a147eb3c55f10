import type { Study } from '../study';
import { between, confidence, count, money, percent, plural } from '../common/format';
import { workOf } from '../common/parts';
import type { Amount, Counted } from './curves';
import { machineOf, shareOf, stepAt, type Question } from './question';

export interface Sentence {
  answer: string;
  doubt: string;
}

/** "15", "88 h" or "210 EUR": an amount of what is counted. */
export function amount(study: Study, value: number, counted: Counted): string {
  if (counted === 'projects') return count(value);
  return counted === 'hours' ? `${count(value)}\u00a0h` : money(value, study.sizing?.currency ?? '');
}

/** A part of the whole as a chart has room for: "15 of 21", "61 %". */
export const amountOf = (value: number, total: number, counted: Counted) =>
  counted === 'projects' ? `${count(value)} of ${count(total)}` : percent(total > 0 ? value / total : 0);

const work: Record<Counted, string> = {
  projects: 'projects',
  hours: 'the machine hours',
  money: 'what the work costs',
};

/** The whole in words, for the axis. */
export function wholeOf(study: Study, q: Question): string {
  if (q.counted === 'projects') return `Up: share of ${plural(q.curve.total, 'project')}.`;
  const left = q.curve.leftOut > 0 ? `; ${plural(q.curve.leftOut, 'project')} left out, of which it is not known` : '';
  const by =
    q.counted === 'hours'
      ? 'each project by the shortest time of any machine'
      : 'each project where it costs least to make (energy, filament, wear, somebody\u2019s time, failed builds, tax)';
  return `Up: share of ${work[q.counted]}, ${amount(study, q.curve.total, q.counted)} a month, ${by}${left}.`;
}

/** The finding where the handle stands, in words. */
export function sentence(study: Study, at: number, q: Question): Sentence {
  const step = stepAt(q.curve, at);
  const made = step ? shareOf(step, q) : null;
  return { answer: answerOf(study, at, q, made), doubt: doubtOf(study, at, q, made) };
}

function answerOf(study: Study, at: number, q: Question, made: Amount | null): string {
  const verb = q.curve.kind === 'fits' ? 'holds' : 'can make';
  const much =
    q.counted === 'projects'
      ? `${count(made?.count ?? 0)} of ${plural(q.curve.total, 'project')}`
      : `${percent(made?.share ?? 0)} of ${work[q.counted]}`;
  if (q.axis.kind === 'size') return `A ${q.axis.format(at)} machine ${verb} ${much}`;
  const step = stepAt(q.curve, at);
  if (!step) return `No machine of the study costs ${q.axis.format(at)} or less`;
  const name = study.machines.find((m) => m.id === machineOf(step, q))?.name ?? '';
  return `For up to ${q.axis.format(at)} one machine ${verb} ${much}: ${name}`;
}

function doubtOf(study: Study, at: number, q: Question, made: Amount | null): string {
  const sample = `a sample of ${plural(workOf(study).length, 'project')}`;
  const step = stepAt(q.curve, at);
  if (!step || !made)
    return q.axis.kind === 'price' ? PRICE_IS_NOT_SIZE : `No project is that small; the sample is ${sample.slice(12)}.`;
  const seen =
    q.counted === 'projects'
      ? `${percent(made.share)} of this work`
      : `${amount(study, made.count, q.counted)} of ${amount(study, q.curve.total, q.counted)} a month of this work`;
  const parts = [`${seen}; of all work like it ${between(made)} (${confidence(study)} interval from ${sample}).`];
  if (q.axis.kind === 'price') parts.push(PRICE_IS_NOT_SIZE);
  else parts.push(compromiseWords(step.fits, step.with_compromise, q));
  if (q.curve.leftOut > 0)
    parts.push(
      `${plural(q.curve.leftOut, 'project')} left out: nothing is known of ${q.counted === 'money' ? 'the cost' : 'the time'}.`,
    );
  return parts.filter((p) => p).join(' ');
}

const PRICE_IS_NOT_SIZE =
  'Price is not size: only machines of this study with a price count, and a dearer one may take less.';

function compromiseWords(fits: Amount, all: Amount, q: Question): string {
  const n = all.count - fits.count;
  if (n <= 0) return '';
  const said = (value: number, share: number) => (q.counted === 'projects' ? count(value) : percent(share));
  if (!q.compromise) return `${said(n, all.share - fits.share)} more with a compromise: tilted or scaled.`;
  if (fits.count === 0)
    return all.count === 1 && q.counted === 'projects'
      ? 'It needs a compromise: tilted or scaled.'
      : 'All need a compromise: tilted or scaled.';
  return `${said(n, all.share - fits.share)} of the ${said(all.count, all.share)} only with a compromise: tilted or scaled.`;
}
