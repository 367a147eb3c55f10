import type { BuildVolume, Machine } from '../../study';

/** The build surface as a closed polygon, mm; a round one by this many corners. */
const ROUND_CORNERS = 96;

export function surfaceOutline(v: BuildVolume, inset = 0): number[][] {
  if (v.shape === 'box') {
    const [w, d] = v.size_mm!;
    return [[0, 0], [w, 0], [w, d], [0, d]];
  }
  if (v.shape === 'prism') return v.polygon_mm!;
  const r = v.diameter_mm! / 2 - inset;
  return Array.from({ length: ROUND_CORNERS }, (_, i) => {
    const a = (2 * Math.PI * i) / ROUND_CORNERS;
    return [r * Math.cos(a), r * Math.sin(a)];
  });
}

/** What margins leave of the surface; null where there are none. */
export function usableOutline(machine: Machine): number[][] | null {
  const m = machine.margins_mm;
  if (!m || m.left + m.right + m.front + m.back + m.top === 0) return null;
  const v = machine.build_volume;
  if (v.shape === 'box') {
    const [w, d] = v.size_mm!;
    return [[m.left, m.front], [w - m.right, m.front], [w - m.right, d - m.back], [m.left, d - m.back]];
  }
  if (v.shape === 'cylinder') return surfaceOutline(v, m.left);
  return insetConvex(v.polygon_mm!, m.left);
}

/** A convex polygon, counter-clockwise, with each side moved inwards. */
function insetConvex(corners: number[][], by: number): number[][] {
  const n = corners.length;
  const sides = corners.map((a, i) => {
    const b = corners[(i + 1) % n];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const inward = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
    return { inward, offset: inward[0] * a[0] + inward[1] * a[1] + by };
  });
  return sides.map((s, i) => {
    const p = sides[(i + n - 1) % n];
    const det = p.inward[0] * s.inward[1] - p.inward[1] * s.inward[0];
    return [
      (p.offset * s.inward[1] - s.offset * p.inward[1]) / det,
      (p.inward[0] * s.offset - s.inward[0] * p.offset) / det,
    ];
  });
}

export function boundsOf(outline: number[][]) {
  const xs = outline.map((p) => p[0]);
  const ys = outline.map((p) => p[1]);
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
}
