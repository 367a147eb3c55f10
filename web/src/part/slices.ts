import type { Pose } from '../study';
import { cutBelow } from './cutting';
import { matrixOf, type Model } from './placing';
import { placedPoints } from './walls';

/** Part of a model between two parallel planes, in the drawn part's coordinates. */
export interface Slab {
  direction: number[];
  fromMm: number;
  toMm: number;
  /** The triangles of the part face inwards. */
  inwards: boolean;
}

/** What of a model's surface lies in a slab; it is open where it was cut. */
export function sliceModel(model: Model, { direction: d, fromMm, toMm }: Slab): Model {
  const positions: number[] = [];
  const corners: number[] = [];
  const along = (p: number[]) => d[0] * p[0] + d[1] * p[1] + d[2] * p[2];
  for (let i = 0; i < model.corners.length; i += 3) {
    const triangle = [0, 1, 2].map((k) => [...model.positions.subarray(3 * model.corners[i + k], 3 * model.corners[i + k] + 3)]);
    const kept = cutBelow(cutBelow(triangle, (p) => along(p) - fromMm), (p) => toMm - along(p));
    const first = positions.length / 3;
    positions.push(...kept.flat());
    for (let k = 2; k < kept.length; k++) corners.push(first, first + k - 1, first + k);
  }
  return { positions: new Float32Array(positions), corners: new Uint32Array(corners) };
}

/** The same pose with the model let down on the surface: a piece of the part may not reach as far as that piece of its hull. */
export function letDown(model: Model, pose: Pose): Pose {
  const points = placedPoints(model, pose);
  let low = Infinity;
  for (let i = 2; i < points.length; i += 3) low = Math.min(low, points[i]);
  if (!Number.isFinite(low)) return pose;
  const [x, y, z] = pose.translation_mm;
  return { ...pose, translation_mm: [x, y, z - low] };
}

/** A pose moved along a direction of the drawn part. */
export function moved(pose: Pose, direction: number[], byMm: number): Pose {
  const rows = matrixOf(pose.rotation);
  const translation_mm = pose.translation_mm.map(
    (t, i) => t + byMm * (rows[i][0] * direction[0] + rows[i][1] * direction[1] + rows[i][2] * direction[2]));
  return { ...pose, translation_mm };
}

/** Signed volume of a mesh, mm³: negative where its triangles face inwards. */
export function signedVolume({ positions: p, corners }: Model): number {
  let six = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [3 * corners[i], 3 * corners[i + 1], 3 * corners[i + 2]];
    six += p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) + p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2])
      + p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
  }
  return six / 6;
}
