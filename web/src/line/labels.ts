/** A label wanted at a place on the line; widths in pixels. */
export interface Wanted {
  x: number;
  width: number;
}

export interface Placed {
  /** Left end of the text. */
  left: number;
  /** 0 is the lane next to the plot. */
  lane: number;
}

const GAP = 14;
const LEADER_CLEARANCE = 4;

/**
 * Gives each label a lane above the plot, so that no text meets another text or the leader of another label. From right
 * to left: a label starts at its mark and runs to the right, so only labels already placed can be in its way.
 * Null when it takes more than `lanes`.
 */
export function placeLabels(wanted: readonly Wanted[], from: number, to: number, lanes: number): Placed[] | null {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[b].x - wanted[a].x);
  const placed: (Placed & { x: number; right: number })[] = [];
  const result: Placed[] = new Array(wanted.length);
  for (const i of order) {
    const { x, width } = wanted[i];
    const left = Math.max(from, Math.min(x - 3, to - width));
    const right = left + width;
    const lane = Array.from({ length: lanes }, (_, l) => l).find((l) => isFree(placed, l, x, left, right));
    if (lane === undefined) return null;
    placed.push({ left, lane, x, right });
    result[i] = { left, lane };
  }
  return result;
}

function isFree(
  placed: readonly (Placed & { x: number; right: number })[],
  lane: number,
  x: number,
  left: number,
  right: number,
) {
  return placed.every((p) => {
    if (p.lane === lane) return right + GAP <= p.left || p.right + GAP <= left;
    if (p.lane > lane) return p.x < left - LEADER_CLEARANCE || p.x > right + LEADER_CLEARANCE;
    return x < p.left - LEADER_CLEARANCE || x > p.right + LEADER_CLEARANCE;
  });
}

/** Moves round marks that would lie on each other straight up, so that each can be read. */
export function spreadMarks(points: readonly { x: number; y: number }[], diameter: number): { x: number; y: number }[] {
  const placed: { x: number; y: number }[] = [];
  for (const p of points) {
    let y = p.y;
    while (placed.some((o) => Math.hypot(o.x - p.x, o.y - y) < diameter)) y -= 2;
    placed.push({ x: p.x, y });
  }
  return placed;
}
