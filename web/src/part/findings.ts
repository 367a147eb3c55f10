import type { Part, Pose } from '../study';
import type { Label, Mark } from './body';
import { matrixOf, type Model } from './placing';
import { placedPoints } from './walls';

/** Where findings lie in the build volume. `only` is the number of one finding, or null for all. */
export function marksOf(part: Part, pose: Pose, only: number | null): Mark[] {
  const rows = matrixOf(pose.rotation);
  const place = (p: number[]) =>
    rows.map((r, i) => pose.scale * (r[0] * p[0] + r[1] * p[1] + r[2] * p[2]) + pose.translation_mm[i]);
  return part.findings.flatMap((finding, i) => {
    if (only !== null && only !== i + 1) return [];
    return finding.places_mm.map((p) => {
      const from = place(p.slice(0, 3));
      return { finding: i + 1, from, to: p.length > 3 ? place(p.slice(3)) : from };
    });
  });
}

/** The finding's number at the first of its places; more would hide each other. */
export const markLabels = (marks: readonly Mark[]): Label[] =>
  marks.filter((m, i) => marks.findIndex((o) => o.finding === m.finding) === i)
    .map((m) => ({ kind: 'finding', text: String(m.finding), at: m.from }));

const TURNS = [-32, 32, -62, 62, 0, 90, -90, 180, 148, -148, 118, -118];
const LIFTS = [24, 55, 80, -8, -40, -60];

/** A surface this near does not hide a place, as a share of the part's size: the mesh is thinned. */
const CLEAR_SHARE = 0.02;

/** The direction to look from, of a few, from which most of the marks are not hidden by the part; the first where several are. */
export function tellingDirection(model: Model, pose: Pose, marks: readonly Mark[]): number[] {
  const points = placedPoints(model, pose);
  const clear = CLEAR_SHARE * pose.scale * sizeOf(model);
  const directions = LIFTS.flatMap((lift) => TURNS.map((turn) => direction(turn, lift)));
  let best = directions[0];
  let most = -1;
  for (const towards of directions) {
    const seen = marks.filter((m) => !isHidden(model, points, m.from, towards, clear)).length;
    if (seen > most) [best, most] = [towards, seen];
    if (most === marks.length) break;
  }
  return best;
}

function direction(turn: number, lift: number): number[] {
  const [a, b] = [((turn - 90) * Math.PI) / 180, (lift * Math.PI) / 180];
  return [Math.cos(b) * Math.cos(a), Math.cos(b) * Math.sin(a), Math.sin(b)];
}

function sizeOf(model: Model): number {
  let [low, high] = [Infinity, -Infinity];
  for (const v of model.positions) [low, high] = [Math.min(low, v), Math.max(high, v)];
  return high - low;
}

type Point = ArrayLike<number>;
const minus = (a: Point, b: Point) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point, b: Point) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** Does a ray from a point meet the part farther away than `clear`? (Möller and Trumbore 1997) */
function isHidden(model: Model, points: Float64Array, from: number[], towards: number[], clear: number): boolean {
  const corner = (i: number) => points.subarray(3 * model.corners[i], 3 * model.corners[i] + 3);
  for (let i = 0; i < model.corners.length; i += 3) {
    const a = corner(i);
    const [u, v] = [minus(corner(i + 1), a), minus(corner(i + 2), a)];
    const across = cross(towards, v);
    const det = dot(u, across);
    if (det === 0) continue;
    const off = minus(from, a);
    const s = dot(off, across) / det;
    if (s < 0 || s > 1) continue;
    const q = cross(off, u);
    const t = dot(towards, q) / det;
    if (t >= 0 && s + t <= 1 && dot(v, q) / det > clear) return true;
  }
  return false;
}
