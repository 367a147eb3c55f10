import type { Pose } from '../study';
import type { Model } from './placing';
import type { Slab } from './slices';

/** Something to draw in the build volume: the part or a piece of it. */
export interface Body {
  model: Model;
  pose: Pose;
  /** Where it was cut from the part; its cut faces are drawn as solid. */
  slab: Slab | null;
}

/** A rectangle on a wall, and whether the part touches it or passes through. */
export interface Patch {
  at: (u: number, v: number) => [number, number, number];
  from: [number, number];
  to: [number, number];
  beyond: boolean;
  /** How far the part goes beyond it, mm. */
  beyondMm: number;
}

/** A place of a finding in the build volume's coordinates, with the finding's number from 1. */
export interface Mark {
  finding: number;
  from: number[];
  to: number[];
}

/** Words at a place of the build volume. */
export interface Label {
  kind: 'touch' | 'beyond' | 'finding';
  text: string;
  at: number[];
}
