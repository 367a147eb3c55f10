/** The parts of JSON Schema (2020-12) that our schemas use. */
export interface Schema {
  $ref?: string;
  $defs?: Record<string, Schema>;
  type?: string;
  title?: string;
  description?: string;
  properties?: Record<string, Schema>;
  required?: string[];
  items?: Schema;
  minItems?: number;
  maxItems?: number;
  enum?: string[];
  const?: unknown;
  oneOf?: Schema[];
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
}

export type Value = null | undefined | boolean | number | string | Value[] | { [key: string]: Value };
export type Table = { [key: string]: Value };

/** The schema itself, with what stands beside a reference laid over what it refers to. */
export function resolve(schema: Schema, root: Schema): Schema {
  if (!schema.$ref) return schema;
  const { $ref, ...beside } = schema;
  const target = root.$defs?.[$ref.replace('#/$defs/', '')] ?? {};
  return { ...resolve(target, root), ...beside };
}

const units: [RegExp, string][] = [
  [/_mm3_s$/, 'mm³/s'], [/_mm_s2$/, 'mm/s²'], [/_mm_s3$/, 'mm/s³'], [/_mm_s$/, 'mm/s'], [/_mm3$/, 'mm³'], [/_mm$/, 'mm'], [/_m2$/, 'm²'], [/_h_per_year$/, 'h a year'],
  [/_h_per_100h$/, 'h per 100 h'], [/_w_mk$/, 'W/(m K)'], [/_j_kg_k$/, 'J/(kg K)'], [/_j_m3k$/, 'J/(m³ K)'], [/_j_k$/, 'J/K'], [/_g_cm3$/, 'g/cm³'], [/_per_kwh$/, 'per kWh'],
  [/_per_kg$/, 'per kg'], [/_per_h$/, 'per h'], [/_min$/, 'min'], [/_years$/, 'years'], [/_hours?$|_h$/, 'h'], [/_s$/, 's'], [/_c$/, '°C'], [/_w$/, 'W'], [/_db$/, 'dB'],
  [/_kg$/, 'kg'], [/_g$/, 'g'], [/_deg$/, '°'], [/_share$/, '0 to 1'],
];

/** A key in words, and its unit: "speed_mm_s" is "speed" in mm/s. */
export function words(key: string): { label: string; unit: string } {
  const unit = units.find(([ending]) => ending.test(key));
  const bare = unit ? key.replace(unit[0], unit[1] === '0 to 1' ? '_share' : '') : key;
  return { label: bare.replaceAll('_', ' '), unit: unit?.[1] ?? '' };
}

/** With a capital, as labels and sentences begin. */
export const first = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What a number may be, in words. */
export function limits(schema: Schema): string {
  const low = schema.exclusiveMinimum !== undefined ? `more than ${schema.exclusiveMinimum}` : schema.minimum !== undefined ? `at least ${schema.minimum}` : '';
  const high = schema.maximum !== undefined ? `at most ${schema.maximum}` : '';
  const all = [low, high].filter(Boolean).join(', ');
  return all && `${all}.`;
}

export const isTable = (value: Value): value is Table => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A new, empty value: what a user then fills. */
export function empty(schema: Schema, root: Schema): Value {
  const s = resolve(schema, root);
  if (s.type === 'object' || s.properties) return {};
  if (s.type === 'array') return [];
  return s.enum?.[0] ?? (s.type === 'boolean' ? false : undefined);
}

/** Without what nobody filled: no key for an empty field. */
export function pruned(value: Value): Value {
  if (Array.isArray(value)) return value.map(pruned).filter((v) => v !== undefined);
  if (!isTable(value)) return value === '' || value === null ? undefined : value;
  const kept = Object.entries(value).map(([k, v]) => [k, pruned(v)] as const).filter(([, v]) => v !== undefined);
  return Object.fromEntries(kept);
}

/** What was typed as a number: unreadable text stays text, so that it is refused and not lost. */
export function numberOf(text: string): Value {
  const trimmed = text.trim().replace(',', '.');
  if (trimmed === '') return undefined;
  return Number.isFinite(Number(trimmed)) ? Number(trimmed) : text;
}
