/** What of a polygon is not below zero of a height that is linear in its points. */
export function cutBelow(polygon: number[][], height: (p: number[]) => number): number[][] {
  return polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length];
    const [ha, hb] = [height(a), height(b)];
    const kept = ha >= 0 ? [a] : [];
    if (ha >= 0 === hb >= 0) return kept;
    const t = ha / (ha - hb);
    return [...kept, a.map((v, k) => v + t * (b[k] - v))];
  });
}
