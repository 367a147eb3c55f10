import { download } from '../common/download';
import { colourNames, resolvedPaint } from '../common/paint';

/** One drawn bar with what is written beside it. */
export interface DrawnRow {
  name: string;
  numbers: string;
}

const NAMES_PX = 190;
const NUMBERS_PX = 330;
const ROW_PX = 52;
const HEAD_PX = 64;
const AXIS_PX = 34;
const KEY_PX = 150;

/** Bars as the page shows them, with title, key and axis, as one SVG file in plain colours. Returns its name. */
export function saveBars(list: Element, title: string, rows: readonly DrawnRow[], key: readonly { fill: string; name: string }[]): string {
  const drawings = [...list.querySelectorAll('.bar svg, .axis svg')];
  const width = NAMES_PX + Math.max(...drawings.map((d) => Number(d.getAttribute('width')))) + NUMBERS_PX;
  const perLine = Math.max(1, Math.floor(width / KEY_PX));
  const keyTop = HEAD_PX + rows.length * ROW_PX + AXIS_PX;
  const height = keyTop + Math.ceil(key.length / perLine) * 22 + 16;
  const parts = drawings.map((drawing, i) => {
    const inner = new XMLSerializer().serializeToString(drawing);
    const row = rows[i];
    const words = row ? text(0, 16, row.name, 600) + text(width - NUMBERS_PX + 12, 16, row.numbers) : '';
    return `<g transform="translate(0 ${HEAD_PX + i * ROW_PX})">${words}<g transform="translate(${NAMES_PX} 0)">${inner}</g></g>`;
  });
  const swatches = key.map(({ fill, name }, i) => {
    const at = `${(i % perLine) * KEY_PX} ${keyTop + Math.floor(i / perLine) * 22}`;
    return `<g transform="translate(${at})"><rect width="20" height="12" fill="url(#stage-${fill})" stroke="var(--ink)"/>${text(26, 11, name)}</g>`;
  });
  const defs = document.getElementById('stage-walls')?.closest('defs');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" font-family="Archivo, sans-serif" font-size="13">`
    + `<title>${escaped(title)}</title>${defs ? new XMLSerializer().serializeToString(defs) : ''}`
    + `<rect width="${width}" height="${height}" fill="var(--ground)"/>${text(0, 24, title, 600)}${parts.join('')}${swatches.join('')}</svg>`;
  const paint = resolvedPaint();
  const plain = colourNames.reduce((s, name) => s.replaceAll(`var(--${name})`, paint[name]), svg);
  download(new Blob([plain], { type: 'image/svg+xml' }), 'builds-side-by-side.svg');
  return 'builds-side-by-side.svg';
}

const escaped = (s: string) => s.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
const text = (x: number, y: number, s: string, weight = 400) =>
  `<text x="${x}" y="${y}" font-weight="${weight}" fill="var(--ink)">${escaped(s)}</text>`;
