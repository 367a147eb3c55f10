import type { CountsAs, Machine, Part, PartFit, Project, ProjectVerdict, Study, Verdict } from '../study';
import { count, missing, percent, plural, scalePercent } from '../common/format';
import { partById, workOf } from '../common/parts';

/** What one cell of the matrix says. */
export interface CellWords {
  verdict: Verdict | 'blocked';
  kind: CountsAs | 'blocked';
  word: string;
  /** A second, smaller line; empty where there is nothing to add. */
  note: string;
}

export function fitOn(study: Study, part: Part | undefined, machine: Machine): PartFit | undefined {
  const fit = part?.fits[study.machines.indexOf(machine)];
  return fit?.machine === machine.id ? fit : part?.fits.find((f) => f.machine === machine.id);
}

export function partWords(study: Study, part: Part, machine: Machine): CellWords {
  const fit = fitOn(study, part, machine);
  if (!fit) return { verdict: 'no', kind: 'no', word: 'not tried', note: '' };
  const blocked = fit.counts_as !== 'no' && !fit.can_make;
  const note = blocked ? whyNot(study, part, machine) : fit.tight ? 'tight' : fit.proved ? '' : 'not proved';
  return { verdict: fit.verdict, kind: blocked ? 'blocked' : fit.counts_as, word: fitWord(fit), note };
}

export function projectWords(study: Study, project: Project, machine: Machine): CellWords {
  const v = project.verdicts[study.machines.indexOf(machine)];
  const decider = partById(study, v.decided_by);
  const fit = fitOn(study, decider, machine);
  const blocked = v.counts_as !== 'no' && !v.can_make;
  const word = fit && fit.verdict === v.verdict ? fitWord(fit) : plainWord(v);
  const why = blocked ? projectWhyNot(study, project, machine) : '';
  return { verdict: v.verdict, kind: blocked ? 'blocked' : v.counts_as, word, note: why || (v.tight ? 'tight' : '') };
}

export const verdictWord: Record<Verdict, string> = {
  as_drawn: 'as drawn', turned: 'turned', tilted: 'tilted', scaled: 'scaled', in_pieces: 'in pieces', no: 'no',
};

const plainWord = (v: ProjectVerdict) => verdictWord[v.verdict];

function fitWord(fit: PartFit): string {
  if (fit.verdict === 'scaled') return `at ${scalePercent(fit.pose.scale)}`;
  if (fit.verdict === 'in_pieces') return `in ${plural(fit.pieces, 'piece')}`;
  if (fit.verdict === 'no' && fit.clearance_mm < 0) return `${missing(-fit.clearance_mm)} short`;
  return verdictWord[fit.verdict];
}

/** Why a part that fits cannot be made there. */
function whyNot(study: Study, part: Part, machine: Machine): string {
  const needs = part.need.heat;
  const has = machine.heats_to;
  if (needs && has) {
    if (has.nozzle_c < needs.nozzle_c) return 'nozzle too cool';
    if (has.bed_c < needs.bed_c) return 'bed too cool';
    if (has.chamber_c < needs.chamber_c) return 'chamber too cool';
  }
  const wall = part.thinnest_wall_mm;
  return wall != null && wall < study.options.bead_width_mm ? 'wall too thin' : 'cannot make';
}

function projectWhyNot(study: Study, project: Project, machine: Machine): string {
  for (const id of project.parts) {
    const part = partById(study, id);
    const fit = fitOn(study, part, machine);
    if (part && fit && !fit.can_make && fit.counts_as !== 'no') return whyNot(study, part, machine);
  }
  return 'cannot make';
}

/** The finding of the whole matrix in one sentence. */
export function matrixTitle(study: Study): string {
  const total = workOf(study).length;
  const best = [...study.machines].sort((a, b) => b.coverage.can_make.count - a.coverage.can_make.count || a.edge_mm - b.edge_mm)[0];
  if (!best || total === 0) return 'No projects on no machines';
  const made = best.coverage.can_make.count;
  if (made === total) {
    const all = study.machines.filter((m) => m.coverage.can_make.count === total);
    return all.length === 1 ? `${best.name} alone makes all ${plural(total, 'project')}`
      : `${best.name} is the smallest that makes all ${plural(total, 'project')}`;
  }
  return `No machine makes everything: ${best.name} comes closest with ${count(made)} of ${count(total)} (${percent(made / total)})`;
}
