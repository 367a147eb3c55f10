import { download } from '../common/download';
import { wrap } from '../common/measure';
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

const TITLE_PX = 17;
const TITLE_LINE_PX = 23;

/** The drawing as a file of its own: its title above, with its size, its typeface and the colours the reader sees. */
export function saveDrawing(svg: SVGSVGElement, name: string, title: string) {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const paint: Record<string, string> = resolvedPaint();
  const [width, height] = ['width', 'height'].map((side) => Number(svg.getAttribute(side)));
  const lines = wrap(title, TITLE_PX, 600, width - 16);
  const head = lines.length * TITLE_LINE_PX + 12;
  copy.setAttribute('viewBox', `0 ${-head} ${width} ${height + head}`);
  copy.setAttribute('height', `${height + head}`);
  lines.forEach((line, i) => {
    const text = document.createElementNS('http://www.w3.org/2000/svg', 'text');
    const at = { x: 8, y: i * TITLE_LINE_PX + TITLE_PX + 4 - head, 'font-size': TITLE_PX, 'font-weight': 600, fill: 'var(--ink)' };
    Object.entries(at).forEach(([key, value]) => text.setAttribute(key, `${value}`));
    text.textContent = line;
    copy.append(text);
  });
  copy.setAttribute('font-family', 'Archivo, Helvetica, Arial, sans-serif');
  copy.setAttribute('style', `background:${paint.ground}`);
  const text = new XMLSerializer().serializeToString(copy).replace(/var\(--(\w+)\)/g, (all, key) => paint[key] ?? all);
  download(new Blob([text], { type: 'image/svg+xml' }), name);
}
