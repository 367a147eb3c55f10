import { download } from '../common/download';
import type { Paint } from '../common/paint';
import type { SeenLabels } from './scene/stage';

interface Text {
  text: string;
  left: number;
  top: number;
}

const FONT_PX = 13;
const PAD_PX = 4;

/** The scene as it is seen, with its labels, as a PNG. What is said of it afterwards. */
export async function savePicture(
  scene: HTMLCanvasElement, texts: readonly Text[], labels: SeenLabels, paint: Paint, spoken: string,
): Promise<string> {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [scene.width, scene.height];
  const context = canvas.getContext('2d');
  if (!context) return 'This browser gives no surface to draw on.';
  context.fillStyle = paint.ground;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(scene, 0, 0);
  context.scale(scene.width / scene.clientWidth, scene.height / scene.clientHeight);
  context.font = `${FONT_PX}px Archivo, sans-serif`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  for (const { left, top, label } of labels) write(context, { text: label.text, left, top }, paint, label.kind !== 'touch');
  for (const text of texts) write(context, text, paint, null);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) return 'The browser could not make a PNG of it.';
  const name = `${spoken.split(/[.:]/)[0].trim().toLowerCase().replace(/[^a-z0-9]+/g, '-')}.png`;
  download(blob, name);
  return `Saved as ${name}.`;
}

function write(context: CanvasRenderingContext2D, { text, left, top }: Text, paint: Paint, warning: boolean | null) {
  const width = context.measureText(text).width + 2 * PAD_PX;
  const box = [left - width / 2, top - FONT_PX / 2 - PAD_PX, width, FONT_PX + 2 * PAD_PX] as const;
  context.fillStyle = paint.ground;
  context.fillRect(...box);
  if (warning !== null) {
    context.strokeStyle = warning ? paint.cursor : paint.lit;
    context.strokeRect(...box);
  }
  context.fillStyle = paint.ink;
  context.fillText(text, left, top);
}
