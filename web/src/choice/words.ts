import type { Study } from '../study';
import type { Limit, Measure, MixMachine } from '../sizing';
import { count } from '../common/format';

export const UNKNOWN = 'not known';

/** What is formatted if it is known. */
export const known = <T>(value: T | null | undefined, format: (v: T) => string) =>
  value == null ? UNKNOWN : format(value);

/** Money in the study's currency: cents only where they matter. */
export function moneyIn(currency: string): (value: number) => string {
  const by = (digits: number) =>
    new Intl.NumberFormat(undefined, {
      style: 'currency',
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    });
  const [whole, cents] = [by(0), by(2)];
  return (value) => (Math.abs(value) >= CENTS_UNTIL ? whole : cents).format(value);
}
const CENTS_UNTIL = 100;

/** Along an axis, whose marks are round. */
export function wholeMoneyIn(currency: string): (value: number) => string {
  const round = new Intl.NumberFormat(undefined, {
    style: 'currency',
    currency,
    minimumFractionDigits: 0,
    maximumFractionDigits: 2,
  });
  return (value) => round.format(value);
}

/** To the cent, so that lines add up as read. */
export function exactMoneyIn(currency: string): (value: number) => string {
  const exact = new Intl.NumberFormat(undefined, { style: 'currency', currency });
  return (value) => exact.format(value);
}

export const machineName = (study: Study, id: string) => study.machines.find((m) => m.id === id)?.name ?? id;
export const partName = (study: Study, id: string) => study.parts.find((p) => p.id === id)?.name ?? id;

/** A difference with its sign. */
export const signed = (value: number, format: (v: number) => string) =>
  `${value < 0 ? '−' : value > 0 ? '+' : ''}${format(Math.abs(value))}`;

/** Points of a hundred between two shares. */
export const points = (share: number) => `${signed(Math.round(share * 100), count)}\u00a0points`;

export const mixWords = (machines: readonly MixMachine[]) =>
  machines.map((m) => `${m.count} × ${m.name}`).join(', ') || 'nothing';

export const measureWords: Record<Measure['measure'], string> = {
  parts: 'parts',
  projects: 'projects',
  projects_as_made: 'projects as often as they are made',
  hours: 'machine hours',
  mass: 'filament by mass',
  money: 'what the work costs',
};

export const limitWords: Record<Limit, string> = {
  none: '',
  nights: 'the nights',
  weekends: 'the weekends',
  unattended: 'the longest unattended run',
  lesson: 'the length of a lesson',
  rules: 'the rules of the place',
  attended: 'the hours somebody is there',
  machine_hours: 'machine hours',
};

const one = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 });
const two = new Intl.NumberFormat(undefined, { maximumFractionDigits: 2 });
export const number = (value: number) => one.format(value);
export const hours = (value: number) => `${one.format(value)}\u00a0h`;
export const squareMetres = (value: number) => `${two.format(value)}\u00a0m²`;
