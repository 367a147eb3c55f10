import type { Heat, Machine, Share, Study } from '../study';

const one = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 });
const oneAlways = new Intl.NumberFormat(undefined, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const whole = new Intl.NumberFormat(undefined, { maximumFractionDigits: 0 });

/** Keeps a number and its unit on one line. */
const NB = '\u00a0';

const few = new Intl.NumberFormat(undefined, { maximumSignificantDigits: 3 });
const METRE_MM = 1000;
const KILO = 1000;
const LARGEST_IN_MM = 20_000;
const LARGEST_IN_M = 1e6 * METRE_MM;

/** A length. Files drawn in the wrong unit, or broken ones, give lengths that only metres or powers of ten can say. */
export const mm = (value: number) => length(value, one);

function length(value: number, digits: Intl.NumberFormat): string {
  if (Math.abs(value) <= LARGEST_IN_MM) return `${digits.format(value)}${NB}mm`;
  return Math.abs(value) <= LARGEST_IN_M ? `${few.format(value / METRE_MM)}${NB}m` : `${value.toExponential(1)}${NB}mm`;
}

export const count = (value: number) => whole.format(value);
export const plural = (n: number, word: string) => `${whole.format(n)}${NB}${word}${n === 1 ? '' : 's'}`;
export const percent = (share: number) => `${whole.format(share * 100)}${NB}%`;
/** A scale, rounded down, so that what it promises fits. */
export const scalePercent = (scale: number) => `${oneAlways.format(Math.floor(scale * 1000) / 10)}${NB}%`;
export const between = (s: Share) => `${whole.format(s.low * 100)}–${percent(s.high)}`;
/** What is missing, rounded up: a promise of 0.0 mm would be wrong. */
export const missing = (value: number) => length(Math.max(0.1, Math.ceil(value * 10 - 1e-6) / 10), oneAlways);
export function sizes(values: readonly number[]): string {
  if (values.some((v) => Math.abs(v) > LARGEST_IN_MM)) return values.map(mm).join(' × ');
  return `${values.map((v) => one.format(v)).join(' × ')}${NB}mm`;
}

/** Keeps numbers with their units and names in quotes in one piece when a sentence breaks into lines. */
export const tie = (text: string) => text.replace(/(\d) (%|mm|m|h|W|kWh|g|cm³|°C)(?![a-z])/g, `$1${NB}$2`);

/** How large a part may become: a share of its size, or times its size where that is plainer. */
export const largest = (scale: number) => (scale < 2 ? `${scalePercent(scale)} of its size` : `${one.format(Math.floor(scale * 10) / 10)} times its size`);

export function price(machine: Machine): string | null {
  if (!machine.price) return null;
  const { amount, currency } = machine.price;
  return new Intl.NumberFormat(undefined, { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount);
}

const currencies = new Map<string, Intl.NumberFormat>();
/** An amount, whole from 100 on. */
export function money(amount: number, currency: string): string {
  const digits = Math.abs(amount) >= 100 || amount === 0 ? 0 : 2;
  const key = `${currency} ${digits}`;
  let format = currencies.get(key);
  if (!format) {
    const options = { style: 'currency', currency, maximumFractionDigits: digits, minimumFractionDigits: digits } as const;
    currencies.set(key, (format = new Intl.NumberFormat(undefined, options)));
  }
  return format.format(amount);
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

const HOUR_S = 3600;
const MINUTES_UNTIL_H = 100;

/** Machine time: hours and minutes, hours alone where minutes would claim too much. */
export const duration = (seconds: number) => `${clock(seconds)}${NB}h`;
export const durations = (low: number, high: number) => `${clock(low)}–${duration(high)}`;

function clock(seconds: number): string {
  if (seconds >= MINUTES_UNTIL_H * HOUR_S) return whole.format(seconds / HOUR_S);
  const minutes = Math.round(Math.max(0, seconds) / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

const two = new Intl.NumberFormat(undefined, { minimumSignificantDigits: 2, maximumSignificantDigits: 2 });
/** Two digits, more only before the point: no estimate of energy deserves more. */
const rounded = (value: number) => (value >= 100 ? whole.format(value) : two.format(value));
export const kwh = (value: number) => `${rounded(value)}${NB}kWh`;
export const kwhs = (low: number, high: number) => `${rounded(Math.max(0, low))}–${kwh(high)}`;
export const watts = (value: number) => `${whole.format(value)}${NB}W`;
export const celsius = (value: number) => `${whole.format(value)}${NB}°C`;
export const mass = (grams: number) =>
  grams < KILO ? `${grams < 10 ? one.format(grams) : whole.format(grams)}${NB}g` : `${few.format(grams / KILO)}${NB}kg`;

/** "Open 210 and Round 240". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

export const confidence = (study: Study) => percent(study.options.confidence);

const dayAndTime = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
/** A moment, as the reader writes it. */
export const moment = (iso: string) => dayAndTime.format(new Date(iso));

const MEGA = 1e6;
/** The size of a file. */
export const bytes = (value: number) =>
  value < MEGA ? `${whole.format(Math.max(1, value / KILO))}${NB}kB` : `${few.format(value / MEGA)}${NB}MB`;
