import type { Machine, Part, Study } from '../study';
import { moneyIn } from '../choice/words';
import { duration, plural } from '../common/format';
import { fitOn } from './words';

export type OrderKey = 'study' | 'name' | 'size' | 'hours' | 'cost' | 'makers';

export interface Order {
  key: OrderKey;
  /** The other way round than the order's own. */
  reversed: boolean;
}

export const orderNames: Record<OrderKey, string> = {
  study: 'as in the study',
  name: 'name',
  size: 'size, largest first',
  hours: 'time there, longest first',
  cost: 'cost there, dearest first',
  makers: 'machines that make it, fewest first',
};

const makersOf = (part: Part) => part.fits.filter((f) => f.can_make).length;

/** What a part is ordered by, for one copy on the machine at choice; null where it has none, which comes last. */
function valueOf(study: Study, part: Part, key: OrderKey, machine: Machine): number | null {
  switch (key) {
    case 'size': return Math.max(...part.size_mm);
    case 'hours': return fitOn(study, part, machine)?.estimate?.time_s.total ?? null;
    case 'cost': return fitOn(study, part, machine)?.cost ?? null;
    case 'makers': return makersOf(part);
    default: return null;
  }
}

/** The value in words, where the order has one that the row does not say anyway. */
export function valueWords(study: Study, part: Part, key: OrderKey, machine: Machine): string {
  const value = valueOf(study, part, key, machine);
  if (key === 'hours') return value === null ? 'no time' : duration(value);
  if (key === 'cost') return value === null || !study.sizing ? 'no cost' : moneyIn(study.sizing.currency)(value);
  return key === 'makers' ? `made by ${plural(value ?? 0, 'machine')}` : '';
}

const byName = (a: string, b: string) => a.localeCompare(b, undefined, { numeric: true, sensitivity: 'base' });
const RISING: readonly OrderKey[] = ['makers'];

interface Named {
  name: string;
  parts: readonly Part[];
}

/** Groups of parts, or parts alone, in an order; a group counts by its largest, its longest, or what fewest machines make. */
export function inOrder<T>(items: readonly T[], as: (item: T) => Named, study: Study, order: Order, machine: Machine): T[] {
  const turn = order.reversed ? -1 : 1;
  if (order.key === 'study') return order.reversed ? [...items].reverse() : [...items];
  if (order.key === 'name') return [...items].sort((a, b) => turn * byName(as(a).name, as(b).name));
  const rising = RISING.includes(order.key);
  const keyed = items.map((item) => {
    const values = as(item).parts.flatMap((p) => valueOf(study, p, order.key, machine) ?? []);
    return { item, value: values.length === 0 ? null : rising ? Math.min(...values) : Math.max(...values) };
  });
  keyed.sort((a, b) => {
    if (a.value === null || b.value === null) return (a.value === null ? 1 : 0) - (b.value === null ? 1 : 0);
    return turn * (rising ? a.value - b.value : b.value - a.value);
  });
  return keyed.map((k) => k.item);
}
