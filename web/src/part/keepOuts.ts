import type { Machine } from '../study';
import { cutBelow } from './cutting';
import type { Model } from './placing';

type Box = Machine['keep_outs_mm'][number];

/** What lies in a box less deep than this only touches it, mm. */
const GRAZES_MM = 0.05;

/** How deep the surface of a placed model reaches into each keep-out, mm: to the nearest side of the box that is not its floor. */
export const reachesInto = (machine: Machine, model: Model, points: Float64Array): number[] =>
  machine.keep_outs_mm.map((box) => {
    let deepest = 0;
    for (let i = 0; i < model.corners.length; i += 3) {
      const triangle = [0, 1, 2].map((k) => [...points.subarray(3 * model.corners[i + k], 3 * model.corners[i + k] + 3)]);
      for (const p of clipped(triangle, box)) deepest = Math.max(deepest, depth(p, box));
    }
    return deepest > GRAZES_MM ? deepest : 0;
  });

const depth = (p: number[], { min, max }: Box) =>
  Math.min(p[0] - min[0], max[0] - p[0], p[1] - min[1], max[1] - p[1], max[2] - p[2]);

/** The part of a polygon inside a box: cut by each side in turn (Sutherland and Hodgman 1974). */
function clipped(polygon: number[][], { min, max }: Box): number[][] {
  for (let axis = 0; axis < 3 && polygon.length > 0; axis++) {
    polygon = cutBelow(polygon, (p) => p[axis] - min[axis]);
    polygon = cutBelow(polygon, (p) => max[axis] - p[axis]);
  }
  return polygon;
}
