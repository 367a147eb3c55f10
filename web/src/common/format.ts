import type { Heat, Machine, Share, Study } from '../study';

const one = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 });
const oneAlways = new Intl.NumberFormat(undefined, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const whole = new Intl.NumberFormat(undefined, { maximumFractionDigits: 0 });

/** Keeps a number and its unit on one line. */
const NB = '\u00a0';

export const mm = (value: number) => `${one.format(value)}${NB}mm`;
export const count = (value: number) => whole.format(value);
export const plural = (n: number, word: string) => `${whole.format(n)}${NB}${word}${n === 1 ? '' : 's'}`;
export const percent = (share: number) => `${whole.format(share * 100)}${NB}%`;
/** A scale, rounded down, so that what it promises fits. */
export const scalePercent = (scale: number) => `${oneAlways.format(Math.floor(scale * 1000) / 10)}${NB}%`;
export const between = (s: Share) => `${whole.format(s.low * 100)}–${percent(s.high)}`;
/** What is missing, rounded up: a promise of 0.0 mm would be wrong. */
export const missing = (value: number) => `${oneAlways.format(Math.max(0.1, Math.ceil(value * 10 - 1e-6) / 10))}${NB}mm`;
export const sizes = (values: readonly number[]) => `${values.map((v) => one.format(v)).join(' × ')}${NB}mm`;

export function price(machine: Machine): string | null {
  if (!machine.price) return null;
  const { amount, currency } = machine.price;
  return new Intl.NumberFormat(undefined, { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount);
}

export function volume(machine: Machine): string {
  const v = machine.build_volume;
  if (v.shape === 'box') return sizes(v.size_mm!);
  if (v.shape === 'cylinder') return `⌀\u202f${one.format(v.diameter_mm!)} × ${mm(v.height_mm)}`;
  return `${v.polygon_mm!.length}-sided × ${mm(v.height_mm)}`;
}

export function heat(h: Heat): string {
  const chamber = h.chamber_c > 0 ? `chamber ${whole.format(h.chamber_c)}${NB}°C` : 'no heated chamber';
  return `nozzle ${whole.format(h.nozzle_c)}${NB}°C, bed ${whole.format(h.bed_c)}${NB}°C, ${chamber}`;
}

/** "Open 210 and Round 240". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

export const confidence = (study: Study) => percent(study.options.confidence);
