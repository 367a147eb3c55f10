import { download } from './download';
import { wrap } from './measure';
import { resolvedPaint } from './paint';

const MARGIN = 24;
const WHO = 170;
const NUMBERS = 330;
const GAP = 20;
const TEXT = 13;
const LINE = 17;

/** A chart of rows as one drawing: its title, each row's name, bar and numbers, the axis, in the colours the reader sees. */
export function saveRows(list: HTMLOListElement) {
  const title = list.closest('article, section, div:has(h3)')?.querySelector('h3, h2')?.textContent?.trim() ?? 'chart';
  const paint: Record<string, string> = resolvedPaint();
  const rows = [...list.children].map((li) => {
    const [who, chart, numbers] = [...li.children] as (HTMLElement | undefined)[];
    return {
      who: linesOf(who, WHO),
      numbers: linesOf(numbers, NUMBERS),
      svg: chart?.querySelector('svg') ?? null,
      axis: li.classList.contains('axis'),
    };
  });
  const wide = Math.max(0, ...rows.map((r) => Number(r.svg?.getAttribute('width') ?? 0)));
  const width = 2 * MARGIN + WHO + GAP + wide + GAP + NUMBERS;
  const parts: string[] = [];
  let y = MARGIN;
  for (const line of wrap(title, 20, 600, width - 2 * MARGIN))
    parts.push(text(MARGIN, (y += 24), line, 20, 600, paint.ink));
  y += 16;
  for (const row of rows) {
    const tall =
      Math.max(Number(row.svg?.getAttribute('height') ?? 0), LINE * Math.max(row.who.length, row.numbers.length)) + 10;
    row.who.forEach((line, i) => parts.push(text(MARGIN, y + TEXT + i * LINE, line, TEXT, 600, paint.ink)));
    if (row.svg) parts.push(placed(row.svg, MARGIN + WHO + GAP, y));
    row.numbers.forEach((line, i) =>
      parts.push(text(MARGIN + WHO + GAP + wide + GAP, y + TEXT + i * LINE, line, TEXT, 400, paint.ink)),
    );
    y += tall;
  }
  const height = y + MARGIN;
  const body = `<title>${escaped(title)}</title>${definitions()}<rect width="${width}" height="${height}" fill="${paint.ground}"/>${parts.join('')}`;
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ` +
    `font-family="Archivo, Helvetica, Arial, sans-serif">${body}</svg>`;
  const coloured = svg.replace(/var\(--(\w+)\)/g, (all, key) => paint[key] ?? all);
  download(
    new Blob([coloured], { type: 'image/svg+xml' }),
    `${title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .slice(0, 60)}.svg`,
  );
}

function linesOf(of: HTMLElement | undefined, width: number): string[] {
  if (!of) return [];
  return of.innerText
    .split('\n')
    .map((l) => l.trim())
    .filter((l) => l)
    .flatMap((l) => wrap(l, TEXT, 600, width));
}

function placed(svg: SVGSVGElement, x: number, y: number): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('x', `${x}`);
  copy.setAttribute('y', `${y}`);
  copy.setAttribute('overflow', 'visible');
  return new XMLSerializer().serializeToString(copy);
}

/** The page's patterns, which bars are filled with. */
function definitions(): string {
  const patterns = [...document.querySelectorAll('svg defs > pattern[id^="stage-"]')];
  return `<defs>${patterns.map((p) => new XMLSerializer().serializeToString(p)).join('')}</defs>`;
}

const text = (x: number, y: number, words: string, size: number, weight: number, fill: string) =>
  `<text x="${x}" y="${y}" font-size="${size}" font-weight="${weight}" fill="${fill}">${escaped(words)}</text>`;

const escaped = (words: string) => words.replace(/&/g, '&amp;').replace(/</g, '&lt;');
