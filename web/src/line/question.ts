import type { Heat, Machine, Need, Part, Project, Study } from '../study';
import { partsOf, workOf } from '../common/parts';
import type { Axis } from './axis';
import type { Amount, Counted, Curve, Step } from './curves';

/** What is asked of the machine: does it hold the work, or (with the heat of `curve`) can it make it? */
export interface Question {
  curve: Curve;
  /** Whether tilted and scaled parts count as made. */
  compromise: boolean;
  /** What the share is a share of. */
  counted: Counted;
  axis: Axis;
}

export type Light = 'lit' | 'half' | 'dim';

/** How a project or part stands at one edge length. */
export interface Standing {
  light: Light;
  word: string;
  /** The cube from which on it counts, mm. */
  needMm: number;
  /** Why no size would win it. */
  blocked: string | null;
}

export function stepAt(curve: Curve, at: number): Step | null {
  let found: Step | null = null;
  for (const step of curve.steps) {
    if (step.at > at) break;
    found = step;
  }
  return found;
}

export const shareOf = (step: Step, q: Question): Amount => (q.compromise ? step.with_compromise : step.fits);

/** On the price line: the machine of the study that takes the most for up to a price. */
export const machineOf = (step: Step, q: Question): string | undefined =>
  q.compromise ? step.machine : step.fits_machine;

export function compromiseMm(need: Need): number {
  return Math.min(need.cube_turned_mm, need.cube_tilted_mm ?? Infinity, need.cube_scaled_mm ?? Infinity);
}

const reaches = (has: Heat, needs: Heat) =>
  has.nozzle_c >= needs.nozzle_c && has.bed_c >= needs.bed_c && has.chamber_c >= needs.chamber_c;

/** Why no size of machine makes it: heat or a wall thinner than one bead. */
function blockedBy(need: Need, q: Question, study: Study): string | null {
  if (q.curve.kind !== 'can_make') return null;
  if (need.heat && q.curve.heat && !reaches(q.curve.heat, need.heat)) return 'too cool';
  if (need.thinnest_wall_mm != null && need.thinnest_wall_mm < study.options.bead_width_mm) return 'wall too thin';
  return null;
}

/** From which cube on something fits, from which on with a compromise, and why none may do. */
interface Threshold {
  fitsMm: number;
  compromiseMm: number;
  tiltedMm: number;
  blocked: string | null;
}

function thresholdOf(need: Need, q: Question, study: Study): Threshold {
  return {
    fitsMm: need.cube_turned_mm,
    compromiseMm: compromiseMm(need),
    tiltedMm: need.cube_tilted_mm ?? Infinity,
    blocked: blockedBy(need, q, study),
  };
}

function standingAt(t: Threshold, at: number, q: Question): Standing {
  const needMm = q.compromise ? t.compromiseMm : t.fitsMm;
  if (t.blocked) return { light: 'dim', word: t.blocked, needMm, blocked: t.blocked };
  if (at >= t.fitsMm) return { light: 'lit', word: 'fits', needMm, blocked: null };
  if (at < t.compromiseMm) return { light: 'dim', word: 'too large', needMm, blocked: null };
  return { light: 'half', word: at >= t.tiltedMm ? 'tilted' : 'scaled', needMm, blocked: null };
}

export const standing = (need: Need, at: number, q: Question, study: Study) =>
  standingAt(thresholdOf(need, q, study), at, q);

/** A project needs all its parts; of alternatives the smallest that is not blocked. */
export function projectStanding(project: Project, at: number, q: Question, study: Study): Standing {
  if (q.axis.kind === 'price') return standingByPrice(project, at, q, study);
  const groups = [...groupsOf(study, project).values()].map((group) => {
    const all = group.map((part) => thresholdOf(part.need, q, study));
    const open = all.filter((t) => !t.blocked);
    const choice = open.length > 0 ? open : all;
    const least = (pick: (t: Threshold) => number) => Math.min(...choice.map(pick));
    return {
      fitsMm: least((t) => t.fitsMm),
      compromiseMm: least((t) => t.compromiseMm),
      tiltedMm: least((t) => t.tiltedMm),
      blocked: open.length > 0 ? null : all[0].blocked,
    };
  });
  if (groups.length === 0) return { light: 'dim', word: 'size unknown', needMm: Infinity, blocked: 'size unknown' };
  const most = (pick: (t: Threshold) => number) => Math.max(...groups.map(pick));
  const blocked = groups.find((g) => g.blocked)?.blocked ?? null;
  const threshold = {
    fitsMm: most((t) => t.fitsMm),
    compromiseMm: most((t) => t.compromiseMm),
    tiltedMm: most((t) => t.tiltedMm),
    blocked,
  };
  return standingAt(threshold, at, q);
}

/** How the machine that takes most for up to a price takes the project. */
function standingByPrice(project: Project, at: number, q: Question, study: Study): Standing {
  const lightOn = (step: Step | null): Light => {
    const index = step ? study.machines.findIndex((m) => m.id === machineOf(step, q)) : -1;
    return index < 0 ? 'dim' : lightOf(project, index, q);
  };
  const light = lightOn(stepAt(q.curve, at));
  const first = q.curve.steps.find((step) => counted(lightOn(step), q));
  const blocked = first ? null : 'on none of these';
  const word = light === 'lit' ? 'fits' : light === 'half' ? 'with a compromise' : (blocked ?? 'not on this one');
  return { light, word, needMm: first?.at ?? Infinity, blocked };
}

function lightOf(project: Project, machine: number, q: Question): Light {
  const v = project.verdicts[machine];
  if (q.curve.kind === 'can_make' && !v.can_make) return 'dim';
  return v.counts_as === 'fits' ? 'lit' : v.counts_as === 'compromise' ? 'half' : 'dim';
}

const counted = (light: Light, q: Question) => light === 'lit' || (q.compromise && light === 'half');

/** The parts of a project, alternatives of each other together. */
function groupsOf(study: Study, project: Project): Map<string, Part[]> {
  const groups = new Map<string, Part[]>();
  for (const part of partsOf(study, project)) {
    const key = part.any_of ? `any of ${part.any_of}` : part.id;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return groups;
}

const counts = (s: Standing, q: Question) => counted(s.light, q);

/** A part that a larger size would win. */
export interface NextPart {
  part: Part;
  project: Project;
  missMm: number;
  needMm: number;
  /** The project is complete once this part is made. */
  completes: boolean;
}

export function nextParts(study: Study, at: number, q: Question, atMost: number): NextPart[] {
  const found: NextPart[] = [];
  for (const project of workOf(study)) {
    const open = openParts(project, at, q, study);
    for (const { part, s } of open) {
      if (s.blocked) continue;
      const completes = open.every((o) => o.part === part || (!o.s.blocked && o.s.needMm <= s.needMm));
      found.push({ part, project, missMm: s.needMm - at, needMm: s.needMm, completes });
    }
  }
  return found.sort((a, b) => a.needMm - b.needMm || a.part.id.localeCompare(b.part.id)).slice(0, atMost);
}

/** The parts a project still lacks; of alternatives the smallest, and none where one is made. */
function openParts(project: Project, at: number, q: Question, study: Study) {
  const better = (a: Standing, b: Standing) => Number(!!a.blocked) - Number(!!b.blocked) || a.needMm - b.needMm;
  return [...groupsOf(study, project).values()]
    .map((group) => group.map((part) => ({ part, s: standing(part.need, at, q, study) })))
    .filter((group) => !group.some((g) => counts(g.s, q)))
    .map((group) => group.sort((a, b) => better(a.s, b.s))[0]);
}

/** How much of the work one of the study's machines really takes, by its own verdicts: projects, or hours or money in a month. */
export function ownAmount(study: Study, machine: Machine, q: Question): number {
  const index = study.machines.indexOf(machine);
  return workOf(study)
    .filter((p) => counted(lightOf(p, index, q), q))
    .reduce((sum, p) => sum + weightOf(study, p, q.counted), 0);
}

/** What a project weighs; 0 where it is not known, as in the curves. */
function weightOf(study: Study, project: Project, of: Counted): number {
  if (of === 'projects') return 1;
  const weight = study.sizing?.weights?.find((w) => w.project === project.id);
  return (of === 'hours' ? weight?.hours_per_month : weight?.money_per_month) ?? 0;
}

export function curveName(study: Study, curve: Curve): string {
  const names = study.machines.filter((m) => curve.like.includes(m.id)).map((m) => m.name);
  return names.join(', ');
}
