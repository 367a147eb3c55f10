import { BufferGeometry, Float32BufferAttribute, Group, LineBasicMaterial, LineSegments } from 'three';
import type { Mark, Patch } from '../body';

const HATCH_MM = 5;
const ARC_STEPS = 12;

interface Colours {
  lit: string;
  cursor: string;
  warn: string;
}

/** Patches of walls: hatched one way where the part touches, crossed where it passes through. */
export function drawPatches(patches: readonly Patch[], colours: Colours): Group {
  const group = new Group();
  for (const patch of patches) {
    const points = [...rim(patch), ...hatch(patch, 1), ...(patch.beyond ? hatch(patch, -1) : [])];
    group.add(lines(points, patch.beyond ? colours.cursor : colours.lit, true));
  }
  return group;
}

/** Places of findings: a stretch as it is, with a cross at each end; seen through the part. */
export function drawMarks(marks: readonly Mark[], sizeMm: number, colour: string): Group {
  const points: number[] = [];
  for (const { from, to } of marks) {
    points.push(...from, ...to);
    for (const p of [from, to])
      for (let axis = 0; axis < 3; axis++)
        for (const by of [-sizeMm, sizeMm]) points.push(...p.map((v, i) => (i === axis ? v + by : v)));
  }
  return new Group().add(lines(points, colour, false));
}

function lines(points: number[], color: string, hidden: boolean): LineSegments {
  const geometry = new BufferGeometry().setAttribute('position', new Float32BufferAttribute(points, 3));
  const drawn = new LineSegments(geometry, new LineBasicMaterial({ color, depthTest: hidden, transparent: !hidden }));
  if (!hidden) drawn.renderOrder = 1;
  return drawn;
}

function rim({ at, from: [u0, v0], to: [u1, v1] }: Patch): number[] {
  const points: number[] = [];
  for (let i = 0; i < ARC_STEPS; i++) {
    const [a, b] = [u0 + ((u1 - u0) * i) / ARC_STEPS, u0 + ((u1 - u0) * (i + 1)) / ARC_STEPS];
    points.push(...at(a, v0), ...at(b, v0), ...at(a, v1), ...at(b, v1));
  }
  return [...points, ...at(u0, v0), ...at(u0, v1), ...at(u1, v0), ...at(u1, v1)];
}

/** Lines u ± v = constant through the rectangle. */
function hatch({ at, from: [u0, v0], to: [u1, v1] }: Patch, way: 1 | -1): number[] {
  const [w, h] = [u1 - u0, v1 - v0];
  const step = Math.max(HATCH_MM, (w + h) / 80);
  const points: number[] = [];
  const put = (u: number, v: number) => points.push(...at(u0 + u, way > 0 ? v0 + v : v1 - v));
  for (let k = step; k < w + h; k += step) {
    put(Math.min(k, w), Math.max(0, k - w));
    put(Math.max(0, k - h), Math.min(k, h));
  }
  return points;
}
