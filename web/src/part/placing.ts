import type { BuildVolume, Machine, Part, PartFit, Pose, ViewModel, Way } from '../study';

export type WayKey = 'best' | 'as_drawn' | 'upright' | 'turned' | 'tilted';

/** Corner points, three numbers each, and triangle corners: a part as it was drawn, mm. */
export interface Model {
  positions: Float32Array;
  corners: Uint32Array;
}

export function decodeModel(part: Part, view: ViewModel | null): Model | null {
  if (!view) return part.wanted ? boxModel(part.size_mm) : null;
  const { low_mm, step_mm } = view;
  const steps = numbersOf(view.positions);
  return {
    positions: Float32Array.from(steps, (s, i) => low_mm[i % 3] + step_mm * s),
    corners: Uint32Array.from(numbersOf(view.corners)),
  };
}

/** Little-endian numbers of 16 bits, whatever the order of bytes in this machine. */
function numbersOf(base64: string): Uint16Array {
  const text = atob(base64);
  return Uint16Array.from({ length: text.length / 2 }, (_, i) => text.charCodeAt(2 * i) | (text.charCodeAt(2 * i + 1) << 8));
}

/** A wanted part: the box with its dimensions, its least corner at the origin. */
function boxModel([x, y, z]: number[]): Model {
  const positions = new Float32Array(24);
  for (let i = 0; i < 8; i++) positions.set([i & 1 ? x : 0, i & 2 ? y : 0, i & 4 ? z : 0], 3 * i);
  const corners = [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5];
  return { positions, corners: new Uint32Array(corners) };
}

export const wayOf = (fit: PartFit, key: WayKey): Way | null => (key === 'best' ? null : fit[key]);

/** The largest scale of this way of fitting that is not above 1. */
export function fittedScale(fit: PartFit, key: WayKey, growth: number): number {
  const way = wayOf(fit, key);
  return Math.min(1, way ? way.largest_scale : fit.pose.scale / growth);
}

/** Scales closer than this are the same: rounding. */
const SAME_SCALE = 1e-9;

/**
 * Where the part is drawn. `full` keeps its size and lets it stick out; else it is shrunk until it fits. `growth` is built size over
 * drawn size.
 */
export function placePart(model: Model, fit: PartFit, key: WayKey, full: boolean, machine: Machine, growth: number): Pose {
  const way = wayOf(fit, key);
  const known = way
    ? { scale: way.largest_scale * growth, rotation: way.rotation ?? [1, 0, 0, 0], translation_mm: way.translation_mm }
    : fit.pose;
  const scale = growth * (full ? 1 : fittedScale(fit, key, growth));
  const there = known.translation_mm
    ? extent(model, known.scale, known.rotation, known.translation_mm)
    : centred(machine.build_volume);
  if (known.translation_mm && Math.abs(known.scale / scale - 1) < SAME_SCALE) {
    return { scale, rotation: known.rotation, translation_mm: known.translation_mm };
  }
  // Shrunk about its middle it stays where it fitted; grown it sticks out evenly. It always stands on the surface.
  const here = extent(model, scale, known.rotation, [0, 0, 0]);
  return {
    scale,
    rotation: known.rotation,
    translation_mm: [there.middle[0] - here.middle[0], there.middle[1] - here.middle[1], -here.low[2]],
  };
}

function extent(model: Model, scale: number, rotation: number[], translation: number[]) {
  const rows = matrixOf(rotation);
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < model.positions.length; i += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const r = rows[axis];
      const p = model.positions;
      const v = scale * (r[0] * p[i] + r[1] * p[i + 1] + r[2] * p[i + 2]) + translation[axis];
      if (v < low[axis]) low[axis] = v;
      if (v > high[axis]) high[axis] = v;
    }
  }
  return { low, high, middle: low.map((l, i) => (l + high[i]) / 2) };
}

/** Rows of the rotation matrix of a unit quaternion w, x, y, z. */
export function matrixOf([w, x, y, z]: number[]): number[][] {
  return [
    [1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)],
    [2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)],
    [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)],
  ];
}

/** Degrees about the vertical to look from, of a few, so that the most of the part is seen. */
export function tellingTurn(model: Model, pose: Pose, candidates: readonly number[]): number {
  const rows = matrixOf(pose.rotation);
  const seen = candidates.map(() => 0);
  const { positions: p, corners } = model;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [3 * corners[i], 3 * corners[i + 1], 3 * corners[i + 2]];
    const u = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const v = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const x = rows[0][0] * n[0] + rows[0][1] * n[1] + rows[0][2] * n[2];
    const y = rows[1][0] * n[0] + rows[1][1] * n[1] + rows[1][2] * n[2];
    candidates.forEach((turn, k) => {
      const angle = ((turn - 90) * Math.PI) / 180;
      seen[k] += Math.abs(x * Math.cos(angle) + y * Math.sin(angle));
    });
  }
  // The first is kept unless another shows clearly more.
  const CLEARLY = 1.2;
  const most = Math.max(...seen);
  return seen[0] * CLEARLY >= most ? candidates[0] : candidates[seen.indexOf(most)];
}

function centred(v: BuildVolume): { middle: number[] } {
  if (v.shape === 'box') return { middle: [v.size_mm![0] / 2, v.size_mm![1] / 2, 0] };
  if (v.shape === 'cylinder') return { middle: [0, 0, 0] };
  const corners = v.polygon_mm!;
  return { middle: [0, 1].map((i) => corners.reduce((sum, c) => sum + c[i], 0) / corners.length).concat(0) };
}
