import type { Machine, Part, Project, Study } from '../study';
import { partWords } from './words';

/** Which parts are shown; an empty text lets all pass. */
export interface Filter {
  words: string;
  verdict: '' | 'make' | 'cannot' | 'fits' | 'compromise' | 'no';
  material: string;
  wanted: '' | 'wanted' | 'made';
}

export const noFilter: Filter = { words: '', verdict: '', material: '', wanted: '' };

export const verdictChoices: Record<Filter['verdict'], string> = {
  '': 'any',
  make: 'can make',
  cannot: 'cannot make',
  fits: 'fits',
  compromise: 'fits with a compromise',
  no: 'does not fit',
};

export const isFiltered = (f: Filter) => f.words.trim() !== '' || f.verdict !== '' || f.material !== '' || f.wanted !== '';

export const NO_MATERIAL = 'no material named';
export const materialOf = (part: Part) => part.material ?? NO_MATERIAL;

const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** Every word asked for stands somewhere in what is known of the part by name. */
function says(part: Part, project: Project, words: readonly string[]): boolean {
  if (words.length === 0) return true;
  const text = plain([part.name, project.name, part.file, part.object, part.material, part.colour, part.made_by, part.licence].join('\n'));
  return words.every((w) => text.includes(w));
}

/** Whether a part is shown. */
export function passes(study: Study, project: Project, part: Part, machine: Machine, filter: Filter): boolean {
  if (filter.material !== '' && materialOf(part) !== filter.material) return false;
  if (filter.wanted !== '' && part.wanted !== (filter.wanted === 'wanted')) return false;
  if (!says(part, project, plain(filter.words).split(/\s+/).filter(Boolean))) return false;
  if (filter.verdict === '') return true;
  const { kind } = partWords(study, part, machine);
  if (filter.verdict === 'make') return kind === 'fits' || kind === 'compromise';
  if (filter.verdict === 'cannot') return kind === 'no' || kind === 'blocked';
  return part.fits.find((f) => f.machine === machine.id)?.counts_as === filter.verdict;
}
