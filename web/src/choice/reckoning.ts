import type { Cost, CostBasis, Load, Sizing } from '../sizing';

/**
 * Rebuilds the accounts of a study from the quantities in its document, with changed rates: the formulas of docs/sizing.md, which a
 * test of the program holds to be its own. Nothing is searched anew.
 */
export type Rates = Record<string, number>;

/** Changing one of these changes when somebody can begin a build, and with it all hours: only the program can do that. */
const NOT_HERE = ['prepare_min', 'remove_min', 'look_min'];

const bare = (key: string) => key.replace(/^cost\./, '');

export const canReckon = (key: string) => key.startsWith('cost.') && !NOT_HERE.includes(bare(key));

/** The range of what may be assumed, as the study file has it. */
export function limitsOf(key: string): { min: number; max: number } {
  const name = bare(key);
  if (name === 'failure_share') return { min: 0, max: 0.95 };
  if (name.includes('share')) return { min: 0, max: 1 };
  if (name === 'life_years') return { min: 0.01, max: 100 };
  return { min: 0, max: /_h|_min/.test(name) && !name.startsWith('labour') ? 10_000 : 1_000_000 };
}

export function ratesOf(sizing: Sizing, changes: Rates = {}): Rates {
  return Object.fromEntries(sizing.assumptions.map((a) => [bare(a.key), changes[a.key] ?? a.value]));
}

const MONTHS = 12;
const MINUTES = 60;
const HUNDRED = 100;

type Account = Omit<Cost, 'running' | 'total'>;

function accountOf(b: CostBasis, count: number, load: Load, printedEach: number, r: Rates): Account {
  const months = MONTHS * (b.upkeep.life_years ?? r.life_years);
  const purchase = (count * b.price * (1 - (b.upkeep.residual_share ?? r.residual_share))) / months;
  const maintaining = (load.hours / HUNDRED) * (b.upkeep.maintain_h_per_100h ?? r.maintain_h_per_100h) * r.labour_per_h;
  const wear = (load.hours / HUNDRED) * (b.upkeep.wear_per_100h ?? b.price * r.wear_share_per_100h);
  const energy = load.energy_kwh * r.energy_per_kwh;
  const filament = load.priced_filament + load.unpriced_kg * r.filament_per_kg;
  const handling = ((load.builds * (r.prepare_min + r.remove_min)) / MINUTES) * r.labour_per_h;
  const again = attempts(r) - 1;
  const failedBought = again * (wear + energy + filament);
  return {
    purchase,
    printed_parts: (count * printedEach) / months,
    assembling: (count * (b.upkeep.assemble_h ?? r.assemble_h) * r.labour_per_h) / months,
    tuning: (count * (b.upkeep.tune_h_per_year ?? r.tune_h_per_year) * r.labour_per_h) / MONTHS,
    owning_tax: purchase * r.tax_share,
    maintaining,
    wear,
    energy,
    filament,
    handling,
    failed_builds: failedBought + again * (maintaining + handling),
    work_tax: (wear + energy + filament + failedBought) * r.tax_share,
  };
}

/** Builds begun for each that succeeds. */
const attempts = (r: Rates) => 1 / (1 - r.failure_share);

const sumOf = (a: Account) => Object.values(a).reduce((sum, line) => sum + line, 0);

/** What the work alone adds: also the price of a machine's printed parts, which another machine makes. */
const workingOf = (a: Account) =>
  a.maintaining + a.wear + a.energy + a.filament + a.handling + a.failed_builds + a.work_tax;

export interface Reckoned {
  needed: number;
  total: number;
}

/** A machine doing all it can; null where the study has no account of it. */
export function machineCost(sizing: Sizing, machine: string, r: Rates): Reckoned | null {
  const m = sizing.machines.find((x) => x.machine === machine);
  if (!m?.basis) return null;
  const needed = Math.max(1, Math.ceil((m.basis.load.hours * attempts(r)) / m.hours_of_one - ROUNDING));
  return {
    needed,
    total: sumOf(accountOf(m.basis, needed, m.basis.load, printedParts(sizing, m.basis, machine, r), r)),
  };
}
/** Of a count that is whole but for the last digit. */
const ROUNDING = 1e-9;

/** The recommended machines with the work they were given; null where a basis is missing. */
export function mixCost(sizing: Sizing, r: Rates): number | null {
  let sum = 0;
  for (const m of sizing.mix?.machines ?? []) {
    const basis = sizing.machines.find((x) => x.machine === m.machine)?.basis;
    if (!basis || !m.load) return null;
    const bought = accountOf(basis, m.count - m.owned, m.load, printedParts(sizing, basis, m.machine, r), r);
    // Of machines that are there already only somebody's time to tune them is still paid.
    sum += sumOf(bought) + accountOf(basis, m.owned, NO_WORK, 0, r).tuning;
  }
  return sizing.mix && sizing.mix.machines.length > 0 ? sum : null;
}
const NO_WORK: Load = { builds: 0, hours: 0, energy_kwh: 0, priced_filament: 0, unpriced_kg: 0 };

/** A machine's own printed parts, on the machine that makes them for least. */
function printedParts(sizing: Sizing, basis: CostBasis, machine: string, r: Rates): number {
  if (basis.printed_parts_each === 0) return 0;
  const loads = sizing.self_making.filter((s) => isFor(sizing, s.of, machine)).map((s) => s.loads ?? []);
  if (loads.length === 0 || loads.some((l) => l.length === 0)) return basis.printed_parts_each;
  const costs = loads.map((on) =>
    on.flatMap(({ machine: by, load }) => {
      const maker = sizing.machines.find((x) => x.machine === by);
      const price = maker?.basis;
      return price ? [workingOf(accountOf(price, 0, load, 0, r))] : [];
    }),
  );
  return costs.some((c) => c.length === 0)
    ? basis.printed_parts_each
    : costs.reduce((sum, c) => sum + Math.min(...c), 0);
}

/** A set names its machine by id or by name, in any case. */
function isFor(sizing: Sizing, of: string, machine: string): boolean {
  const same = (a: string) => a.toLowerCase().replace(/[^a-z0-9]+/g, '-') === machine.toLowerCase();
  return same(of) && sizing.machines.some((m) => m.machine === machine);
}
