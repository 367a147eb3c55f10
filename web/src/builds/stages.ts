import type { StageSeconds } from '../study';

/** Where the time of a build goes, in the order of the bars. */
export type StageKey = 'warm_up' | 'walls' | 'solid' | 'infill' | 'support' | 'travel' | 'waiting' | 'release';

export interface Stage {
  key: StageKey;
  name: string;
}

export const stages: Stage[] = [
  { key: 'warm_up', name: 'warm-up' },
  { key: 'walls', name: 'walls' },
  { key: 'solid', name: 'solid faces' },
  { key: 'infill', name: 'infill' },
  { key: 'support', name: 'support and brim' },
  { key: 'travel', name: 'travel' },
  { key: 'waiting', name: 'waiting' },
  { key: 'release', name: 'release' },
];

export type SecondsByStage = Record<StageKey, number>;

/** The stages add up to the total. Waiting is for layers to cool and for changes of filament. */
export const secondsOf = (t: StageSeconds): SecondsByStage => ({
  warm_up: t.warm_up,
  walls: t.walls ?? 0,
  solid: t.solid_faces ?? 0,
  infill: t.infill ?? 0,
  support: (t.support ?? 0) + (t.brim ?? 0),
  travel: t.travel,
  waiting: t.waiting + t.changes,
  release: t.release,
});

const TICKS_H = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const LEAST_TICK_PX = 62;

/** Round hours along a time axis, s. */
export function timeTicks(upToS: number, widthPx: number): number[] {
  const stepS = 3600 * (TICKS_H.find((h) => (h * 3600 * widthPx) / upToS >= LEAST_TICK_PX) ?? 10_000);
  return Array.from({ length: Math.floor(upToS / stepS) + 1 }, (_, i) => i * stepS);
}
