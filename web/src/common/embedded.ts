import type { Study } from '../study';
import { keepLooks, type Looks } from './models';

/** Why a report cannot be shown, as a sentence for its reader. */
export class Unreadable extends Error {}

/** The study that lies in this page, unpacked; its models and pictures stay packed until they are asked for. */
export async function embeddedStudy(): Promise<Study> {
  const text = embeddedText('study');
  if (text === null) throw new Unreadable('No study lies in this page. Run the study again to write its report anew.');
  const { study, ...looks } = JSON.parse(new TextDecoder().decode(await unpack(text))) as { study: Study } & Looks;
  keepLooks(study, looks);
  return study;
}

export const embeddedText = (id: string): string | null => document.getElementById(id)?.textContent ?? null;

/** Undoes src/Platewright.Report/PackedText.cs: base64 of gzip. */
export async function unpack(packed: string): Promise<Uint8Array> {
  if (typeof DecompressionStream === 'undefined')
    throw new Unreadable('This browser cannot unpack the study in this page: open the file in one from 2023 or later.');
  try {
    const text = atob(packed);
    const bytes = new Uint8Array(text.length);
    for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
    const plain = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
    return new Uint8Array(await new Response(plain).arrayBuffer());
  } catch {
    throw new Unreadable('This file is damaged: part of what it holds cannot be unpacked. Copy it again, or run the study again.');
  }
}
