import { download } from '../common/download';
import { resolvedPaint } from '../common/paint';

/** Round values from `from` to `to`, about `atMost` of them. */
export function roundTicks(from: number, to: number, atMost: number): number[] {
  const least = (to - from) / Math.max(1, atMost);
  const ten = 10 ** Math.floor(Math.log10(Math.max(least, Number.MIN_VALUE)));
  const step = ten * ([1, 2, 5].find((f) => f * ten >= least) ?? 10);
  const first = Math.ceil(from / step - ROUNDING);
  return Array.from({ length: Math.floor(to / step + ROUNDING) - first + 1 }, (_, i) => (first + i) * step);
}
/** Of a step, so that a tick on the edge is drawn. */
const ROUNDING = 1e-9;

export const pathOf = (rows: readonly { x: number; y: number }[]) =>
  rows.map((p, i) => `${i ? 'L' : 'M'}${p.x.toFixed(1)} ${p.y.toFixed(1)}`).join('');

/** The drawing as a file of its own: with its size, its typeface and the colours the reader sees. */
export function saveDrawing(svg: SVGSVGElement, name: string) {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const paint: Record<string, string> = resolvedPaint();
  copy.setAttribute('viewBox', `0 0 ${svg.getAttribute('width')} ${svg.getAttribute('height')}`);
  copy.setAttribute('font-family', 'Archivo, Helvetica, Arial, sans-serif');
  copy.setAttribute('style', `background:${paint.ground}`);
  const text = new XMLSerializer().serializeToString(copy).replace(/var\(--(\w+)\)/g, (all, key) => paint[key] ?? all);
  download(new Blob([text], { type: 'image/svg+xml' }), name);
}
