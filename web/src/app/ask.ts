import type { components } from '../api';

export type Documents = components['schemas'];
export type FieldError = Documents['FieldErrorDocument'];

/** Why the app did not do something: a sentence, and what is wrong where in what was sent. */
export class Refusal extends Error {
  constructor(sentence: string, readonly fields: readonly FieldError[], readonly status: number) {
    super(sentence);
  }
}

/** Asks the app; its refusals and a lost connection are thrown as a `Refusal`. */
export async function ask<T>(method: string, path: string, body?: unknown): Promise<T> {
  const sent = body instanceof FormData ? { body } : body === undefined ? {} : { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } };
  let response: Response;
  try {
    response = await fetch(path, { method, ...sent });
  } catch {
    throw new Refusal('The app does not answer. It may have been ended: start it again, then reload this page. Nothing is lost.', [], 0);
  }
  const text = await response.text();
  if (response.ok) return (text ? JSON.parse(text) : undefined) as T;
  try {
    const refused = JSON.parse(text) as Documents['RefusalDocument'];
    throw new Refusal(refused.error, refused.fields, response.status);
  } catch (e) {
    if (e instanceof Refusal) throw e;
    throw new Refusal(`The app answered with ${response.status} and no reason.`, [], response.status);
  }
}

/** Sends files with a word on how far it is, 0 … 1: fetch cannot tell. */
export function sendFiles(path: string, files: readonly { path: string; file: File }[], onshare: (share: number) => void) {
  return new Promise<Documents['UploadDocument']>((resolve, reject) => {
    const form = new FormData();
    for (const { path: name, file } of files) form.append('files', file, name);
    const request = new XMLHttpRequest();
    request.open('POST', path);
    request.upload.onprogress = (e) => e.lengthComputable && onshare(e.loaded / e.total);
    request.onload = () => {
      if (request.status === 200) return resolve(JSON.parse(request.responseText));
      try {
        const refused = JSON.parse(request.responseText) as Documents['RefusalDocument'];
        reject(new Refusal(refused.error, refused.fields, request.status));
      } catch {
        reject(new Refusal(`The app answered with ${request.status} and no reason.`, [], request.status));
      }
    };
    request.onerror = () => reject(new Refusal('The files did not arrive: the app does not answer, or they are more than it takes at once.', [], 0));
    request.send(form);
  });
}

export const sentenceOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
export const fieldsOf = (error: unknown): readonly FieldError[] => (error instanceof Refusal ? error.fields : []);
export const studyPath = (id: string) => `/study/${encodeURIComponent(id)}`;
export const studyApi = (id: string) => `/api/studies/${encodeURIComponent(id)}`;
