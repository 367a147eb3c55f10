import type { Part, Project, Study } from '../study';
import { pictureOf } from './models';

const byStudy = new WeakMap<Study, Map<string, Part>>();

export function partById(study: Study, id: string | null | undefined): Part | undefined {
  let map = byStudy.get(study);
  if (!map) byStudy.set(study, (map = new Map(study.parts.map((p) => [p.id, p]))));
  return id == null ? undefined : map.get(id);
}

export const partsOf = (study: Study, project: Project): Part[] =>
  project.parts.flatMap((id) => partById(study, id) ?? []);

/** The projects that shares and curves count: not the printed parts of a machine. */
export const workOf = (study: Study): Project[] => study.projects.filter((p) => p.printed_parts_of == null);

/** The part that stands for a project in pictures: its largest. */
export function faceOf(study: Study, project: Project): Part | null {
  let face: Part | null = null;
  for (const part of partsOf(study, project)) {
    if (!face || part.need.cube_turned_mm > face.need.cube_turned_mm) face = part;
  }
  return face;
}

export function facePicture(study: Study, project: Project): string | null {
  const face = faceOf(study, project);
  return face && pictureOf(study, face);
}
