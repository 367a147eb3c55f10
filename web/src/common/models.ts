import type { Maybe, Part, Study, ViewModel } from '../study';
import { embeddedText, unpack } from './embedded';

/** Where the looks of a report's parts lie in the page: numbers of `model-N` and `picture-N`, in the order of the parts. */
export interface Looks {
  models: Maybe<number>[];
  pictures: Maybe<number>[];
}

interface Places {
  model: Map<string, number>;
  picture: Map<string, number>;
}

const places = new WeakMap<Study, Places>();

/** Says where a study's looks lie, for a study that does not carry them in its parts. */
export function keepLooks(study: Study, looks: Looks) {
  const numbered = (numbers: Maybe<number>[]) =>
    new Map(study.parts.flatMap((part, i): [string, number][] => (numbers[i] == null ? [] : [[part.id, numbers[i]]])));
  places.set(study, { model: numbered(looks.models), picture: numbered(looks.pictures) });
}

export const hasModel = (study: Study, part: Part) => part.model != null || places.get(study)?.model.has(part.id) === true;

/** A part's light mesh: from the part itself where it carries it, else unpacked from the page now. */
export async function modelOf(study: Study, part: Part): Promise<ViewModel | null> {
  if (part.model) return part.model;
  const text = textAt('model', places.get(study)?.model.get(part.id));
  return text === null ? null : modelFrom(await unpack(text));
}

/** A part's still picture as an address for an image; null where it has none. */
export function pictureOf(study: Study, part: Part): string | null {
  if (part.picture) return part.picture;
  const text = textAt('picture', places.get(study)?.picture.get(part.id));
  return text === null ? null : (JSON.parse(text) as string);
}

const textAt = (kind: string, number: number | undefined) => (number === undefined ? null : embeddedText(`${kind}-${number}`));

/** Undoes src/Platewright.Report/PackedModel.cs. */
function modelFrom(bytes: Uint8Array): ViewModel {
  const lengths = new DataView(bytes.buffer, bytes.byteOffset);
  const heading = 8;
  const points = heading + lengths.getUint32(0, true);
  const corners = points + lengths.getUint32(4, true);
  const known = JSON.parse(new TextDecoder().decode(bytes.subarray(heading, points))) as ViewModel;
  return { ...known, positions: gather(bytes.subarray(points, corners), 3), corners: gather(bytes.subarray(corners), 1) };
}

/** From differences, low bytes before high bytes, to base64 of little-endian numbers. */
function gather(spread: Uint8Array, axes: number): string {
  const count = spread.length / 2;
  const numbers = new Uint8Array(spread.length);
  const before = new Uint16Array(axes);
  for (let i = 0; i < count; i++) {
    const number = (before[i % axes] += spread[i] | (spread[count + i] << 8));
    numbers[2 * i] = number & 0xff;
    numbers[2 * i + 1] = (number >> 8) & 0xff;
  }
  let text = '';
  for (const byte of numbers) text += String.fromCharCode(byte);
  return btoa(text);
}
