import type { Part, Study } from '../study';
import { csv } from '../common/download';
import { partById } from '../common/parts';
import type { Group } from './grouping';
import { fitOn, partWords } from './words';

const number = (value: number | null | undefined) => (value == null ? '' : String(value));

/** The parts shown, in their order, with a word, the time and the cost of one copy for each machine. */
export function tableOf(study: Study, groups: readonly Group[]): Blob {
  const projects = new Map(study.projects.flatMap((p) => p.parts.map((id) => [partById(study, id), p.name] as const)));
  const head = [
    'project', 'part', 'file', 'quantity', 'wanted', 'material', 'colour', 'size_x_mm', 'size_y_mm', 'size_z_mm', 'made_by', 'licence',
    ...study.machines.flatMap((m) => [m.name, `${m.name}, can make`, `${m.name}, time_s`, `${m.name}, cost`]),
  ];
  const row = (part: Part) => [
    projects.get(part) ?? '', part.name, part.file ?? '', String(part.quantity), String(part.wanted), part.material ?? '', part.colour ?? '',
    ...part.size_mm.map(String), part.made_by ?? '', part.licence ?? '',
    ...study.machines.flatMap((m) => {
      const fit = fitOn(study, part, m);
      const { word, note } = partWords(study, part, m);
      return [note ? `${word}, ${note}` : word, String(fit?.can_make ?? false), number(fit?.estimate?.time_s.total), number(fit?.cost)];
    }),
  ];
  return csv(head, groups.flatMap((g) => g.parts.map(row)));
}
