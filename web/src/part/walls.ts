import type { Machine, Pose } from '../study';
import { surfaceOutline, usableOutline } from './scene/outline';
import { matrixOf, type Model } from './placing';

/** Nearer than this a part touches a wall, mm. */
export const TOUCHES_MM = 0.05;

/** One wall of what margins leave of the build volume. */
export interface Wall {
  name: string;
  /** Distance of a point inside it, mm; negative beyond. */
  gapMm: (x: number, y: number, z: number) => number;
  /** Along the wall and up, mm, of a point near it; of the top: x and y. */
  along: (x: number, y: number, z: number) => [number, number];
  /** The point of the wall at such a place. */
  at: (u: number, v: number) => [number, number, number];
  /** Length of once around, mm; of a round wall. */
  aroundMm?: number;
}

const BOX_ORDER = ['left', 'right', 'front', 'back'];
/** Sides of a box's outline, counter-clockwise from its front left corner. */
const OUTLINE_ORDER = ['front', 'right', 'back', 'left'];

/** The walls in the order of `gaps_mm`. */
export function wallsOf(machine: Machine): Wall[] {
  const v = machine.build_volume;
  const m = machine.margins_mm;
  const outline = usableOutline(machine) ?? surfaceOutline(v);
  const height = v.height_mm - m.top;
  const named = (base: string, margin: number) => (margin > 0 ? `${base} margin` : `${base} wall`);
  const top: Wall = {
    name: m.top > 0 ? 'top margin' : 'top', gapMm: (_x, _y, z) => height - z, along: (x, y) => [x, y], at: (x, y) => [x, y, height],
  };
  if (v.shape === 'cylinder') return [round(v.diameter_mm! / 2 - m.left, named('round', m.left)), top];
  const sides = outline.map((a, i) => side(a, outline[(i + 1) % outline.length], named(`${ordinal(i + 1)} side`, m.left)));
  if (v.shape === 'prism') return [...sides, top];
  const margins: Record<string, number> = { left: m.left, right: m.right, front: m.front, back: m.back };
  return [...BOX_ORDER.map((name) => ({ ...sides[OUTLINE_ORDER.indexOf(name)], name: named(name, margins[name]) })), top];
}

const endings = ['th', 'st', 'nd', 'rd'];
const ordinal = (n: number) => `${n}${endings[n % 10 < 4 && Math.floor((n % 100) / 10) !== 1 ? n % 10 : 0]}`;

function side(a: number[], b: number[], name: string): Wall {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  return {
    name,
    gapMm: (x, y) => dx * (y - a[1]) - dy * (x - a[0]),
    along: (x, y, z) => [dx * (x - a[0]) + dy * (y - a[1]), z],
    at: (u, z) => [a[0] + dx * u, a[1] + dy * u, z],
  };
}

function round(radius: number, name: string): Wall {
  return {
    name,
    aroundMm: 2 * Math.PI * radius,
    gapMm: (x, y) => radius - Math.hypot(x, y),
    along: (x, y, z) => [radius * Math.atan2(y, x), z],
    at: (u, z) => [radius * Math.cos(u / radius), radius * Math.sin(u / radius), z],
  };
}

/** The points of a model where a pose puts them, three numbers each. */
export function placedPoints(model: Model, pose: Pose): Float64Array {
  const rows = matrixOf(pose.rotation);
  const points = new Float64Array(model.positions.length);
  const p = model.positions;
  for (let i = 0; i < p.length; i += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const r = rows[axis];
      points[i + axis] = pose.scale * (r[0] * p[i] + r[1] * p[i + 1] + r[2] * p[i + 2]) + pose.translation_mm[axis];
    }
  }
  return points;
}

/** To each wall, of a model as it is drawn: thinned, and so about right. */
export const drawnGaps = (walls: readonly Wall[], points: Float64Array): number[] =>
  walls.map((wall) => {
    let least = Infinity;
    for (let i = 0; i < points.length; i += 3) least = Math.min(least, wall.gapMm(points[i], points[i + 1], points[i + 2]));
    return least;
  });
