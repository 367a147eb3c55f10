import { listed, missing, mm } from '../common/format';
import type { Label, Patch } from './body';
import { TOUCHES_MM, type Wall } from './walls';

/** What touches and what sticks out, in sentences. `about` where the gaps are those of a thinned mesh. */
export function touchSentences(walls: readonly Wall[], gaps: readonly number[], about: boolean): string[] {
  const near = about ? 'about ' : '';
  const named = walls.map((wall, i) => ({ name: `the ${wall.name}`, gap: gaps[i] }));
  const beyond = named.filter((w) => w.gap < -TOUCHES_MM);
  const touched = named.filter((w) => Math.abs(w.gap) <= TOUCHES_MM);
  const free = named.filter((w) => w.gap > TOUCHES_MM).sort((a, b) => a.gap - b.gap);
  const top = named[named.length - 1];
  const told = free.slice(0, 1).concat(free.slice(1).filter((w) => w === top));
  const sentences: string[] = [];
  if (beyond.length > 0) sentences.push(`Sticks out ${listed(beyond.map((w) => `${near}${missing(-w.gap)} at ${w.name}`))}.`);
  if (touched.length > 0) sentences.push(`Touches ${listed(touched.map((w) => w.name))}, ${near}${mm(0)} away.`);
  if (told.length > 0) sentences.push(`${told.map((w, i) => `${i ? '' : 'Room left: '}${near}${mm(w.gap)} to ${w.name}`).join('; ')}.`);
  return sentences;
}

/** What a keep-out is reached into by. */
export function keepOutSentences(depths: readonly number[]): string[] {
  if (depths.length === 0) return [];
  const hit = depths.flatMap((d, i) => (d > 0 ? [`about ${missing(d)} into ${depths.length > 1 ? `keep-out ${i + 1}` : 'the keep-out'}`] : []));
  if (hit.length > 0) return [`Reaches ${listed(hit)}.`];
  return [depths.length > 1 ? 'Clear of all keep-outs.' : 'Clear of the keep-out.'];
}

/** Points this much farther than the nearest one belong to what touches: the mesh is thinned. */
const CONTACT_DEPTH_MM = 0.3;
/** Patches reach this far beyond what touches, so that a point is seen too. */
const RIM_MM = 4;

/** Where each wall is touched or passed, to draw on it. */
export function touchPatches(walls: readonly Wall[], gaps: readonly number[], points: Float64Array): Patch[] {
  return walls.flatMap((wall, i) => (gaps[i] <= TOUCHES_MM ? patchOn(wall, gaps[i], points) : []));
}

function patchOn(wall: Wall, gap: number, points: Float64Array): Patch[] {
  const own: number[] = [];
  let least = Infinity;
  for (let i = 0; i < points.length; i += 3) {
    own.push(wall.gapMm(points[i], points[i + 1], points[i + 2]));
    least = Math.min(least, own[own.length - 1]);
  }
  const beyond = gap < -TOUCHES_MM;
  const upTo = beyond ? Math.max(0, least + CONTACT_DEPTH_MM) : least + CONTACT_DEPTH_MM;
  const around = wall.aroundMm ?? Infinity;
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  let first: number | null = null;
  own.forEach((g, i) => {
    if (g > upTo) return;
    const [u, v] = wall.along(points[3 * i], points[3 * i + 1], points[3 * i + 2]);
    first ??= u;
    const near = Number.isFinite(around) ? u - around * Math.round((u - first) / around) : u;
    low[0] = Math.min(low[0], near);
    high[0] = Math.max(high[0], near);
    low[1] = Math.min(low[1], v);
    high[1] = Math.max(high[1], v);
  });
  if (first === null) return [];
  const [u0, u1, v0, v1] = [low[0] - RIM_MM, high[0] + RIM_MM, low[1] - RIM_MM, high[1] + RIM_MM];
  return [{ at: wall.at, from: [u0, v0], to: [u1, v1], beyond, beyondMm: Math.max(0, -gap) }];
}

/** What the scene writes beside the patches. */
export const patchLabels = (patches: readonly Patch[]): Label[] =>
  patches.map((patch) => ({
    kind: patch.beyond ? 'beyond' : 'touch',
    text: patch.beyond ? `${missing(patch.beyondMm)} out` : 'touches',
    at: patch.at((patch.from[0] + patch.to[0]) / 2, patch.to[1]),
  }));
