import { flushSync, mount, unmount } from 'svelte';
import type { Study } from '../study';
import { download } from '../common/download';
import { resolvedPaint } from '../common/paint';
import Poster from './Poster.svelte';
import type { Question } from './question';
import type { Domain } from './scale';

const PNG_PIXELS_PER_UNIT = 2;

/** Draws the line with its sentence, pictures and next parts as one picture and hands it to the browser as a file. */
export async function saveLine(
  study: Study,
  q: Question,
  at: number,
  domain: Domain,
  as: 'svg' | 'png',
): Promise<string> {
  const svg = drawPoster(study, q, at, domain);
  const name = `${q.axis.file(at)}.${as}`;
  download(as === 'svg' ? new Blob([svg.text], { type: 'image/svg+xml' }) : await rasterise(svg), name);
  return name;
}

interface Drawing {
  text: string;
  width: number;
  height: number;
}

function drawPoster(study: Study, q: Question, at: number, domain: Domain): Drawing {
  const target = document.createElement('div');
  const props = { study, q, at, domain, paint: resolvedPaint(), fontFace: fontFace() };
  const poster = mount(Poster, { target, props });
  flushSync();
  const svg = target.querySelector('svg')!;
  const drawing = {
    text: new XMLSerializer().serializeToString(svg),
    width: Number(svg.getAttribute('width')),
    height: Number(svg.getAttribute('height')),
  };
  void unmount(poster);
  return drawing;
}

/** The page's own typeface, so that the picture reads the same where it is not installed. */
function fontFace(): string {
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) if (rule instanceof CSSFontFaceRule) return rule.cssText;
  }
  return '';
}

async function rasterise(svg: Drawing): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg.text)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = svg.width * PNG_PIXELS_PER_UNIT;
  canvas.height = svg.height * PNG_PIXELS_PER_UNIT;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('this browser gives no surface to draw on; save as SVG instead');
  context.scale(PNG_PIXELS_PER_UNIT, PNG_PIXELS_PER_UNIT);
  context.drawImage(image, 0, 0, svg.width, svg.height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('the browser could not make a PNG of it; save as SVG instead');
  return blob;
}
