import type { Machine, Part, Project, Study } from '../study';
import { partsOf } from '../common/parts';
import { inOrder, type Order } from './ordering';
import { materialOf, passes, type Filter } from './picking';
import { partWords } from './words';

export type Grouping = 'project' | 'material' | 'verdict' | 'none';

export const groupingNames: Record<Grouping, string> = {
  project: 'project', material: 'material', verdict: 'verdict', none: 'nothing',
};

export interface Group {
  id: string;
  name: string;
  /** Only where parts are grouped by project. */
  project: Project | null;
  parts: Part[];
}

export type Row = { kind: 'group'; id: string; group: Group } | { kind: 'part'; id: string; part: Part };

const kindNames = { fits: 'fits', compromise: 'fits with a compromise', blocked: 'fits, but cannot be made', no: 'does not fit' } as const;

/** The parts that pass, in groups and in order. */
export function groupsOf(study: Study, grouping: Grouping, order: Order, machine: Machine, filter: Filter): Group[] {
  const named = (part: Part) => ({ name: part.name, parts: [part] });
  const shown = study.projects.map((project) => ({
    project, parts: partsOf(study, project).filter((part) => passes(study, project, part, machine, filter)),
  }));
  const parts = (of: Part[]) => inOrder(of, named, study, order, machine);
  if (grouping === 'project') {
    const groups = shown.filter((s) => s.parts.length > 0)
      .map(({ project, parts: of }): Group => ({ id: project.id, name: project.name, project, parts: parts(of) }));
    return inOrder(groups, (g) => g, study, order, machine);
  }
  const all = parts(shown.flatMap((s) => s.parts));
  if (grouping === 'none') return [{ id: '', name: '', project: null, parts: all }];
  const names = grouping === 'material' ? [...new Set(all.map(materialOf))].sort((a, b) => a.localeCompare(b)) : Object.values(kindNames);
  const nameOf = (part: Part): string => (grouping === 'material' ? materialOf(part) : kindNames[partWords(study, part, machine).kind]);
  return names.flatMap((name) => {
    const members = all.filter((part) => nameOf(part) === name);
    return members.length > 0 ? [{ id: `${grouping} ${name}`, name, project: null, parts: members }] : [];
  });
}

/** Groups as rows, each with its parts below it where it is open. */
export function rowsOf(groups: readonly Group[], grouping: Grouping, isOpen: (group: Group) => boolean): Row[] {
  return groups.flatMap((group): Row[] => {
    const parts = group.parts.map((part): Row => ({ kind: 'part', id: `part ${part.id}`, part }));
    if (grouping === 'none') return parts;
    const head: Row = { kind: 'group', id: `group ${group.id}`, group };
    return isOpen(group) ? [head, ...parts] : [head];
  });
}
