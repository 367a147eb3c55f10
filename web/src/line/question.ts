import type { Curve, CurveStep, Heat, Machine, Need, Part, Project, Share, Study } from '../study';
import { between, confidence, count, mm, percent, plural } from '../common/format';
import { partsOf, workOf } from '../common/parts';

/** What is asked of the imagined machine: does it hold the work, or (with the heat of `curve`) can it make it? */
export interface Question {
  curve: Curve;
  /** Whether tilted and scaled parts count as made. */
  compromise: boolean;
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

export function stepAt(curve: Curve, edgeMm: number): CurveStep | null {
  let found: CurveStep | null = null;
  for (const step of curve.steps) {
    if (step.edge_mm > edgeMm) break;
    found = step;
  }
  return found;
}

export const shareOf = (step: CurveStep, q: Question): Share => (q.compromise ? step.with_compromise : step.fits);

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

function standingAt(t: Threshold, edgeMm: number, q: Question): Standing {
  const needMm = q.compromise ? t.compromiseMm : t.fitsMm;
  if (t.blocked) return { light: 'dim', word: t.blocked, needMm, blocked: t.blocked };
  if (edgeMm >= t.fitsMm) return { light: 'lit', word: 'fits', needMm, blocked: null };
  if (edgeMm < t.compromiseMm) return { light: 'dim', word: 'too large', needMm, blocked: null };
  return { light: 'half', word: edgeMm >= t.tiltedMm ? 'tilted' : 'scaled', needMm, blocked: null };
}

export const standing = (need: Need, edgeMm: number, q: Question, study: Study) => standingAt(thresholdOf(need, q, study), edgeMm, q);

/** A project needs all its parts; of alternatives the smallest that is not blocked. */
export function projectStanding(project: Project, edgeMm: number, q: Question, study: Study): Standing {
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
  const threshold = { fitsMm: most((t) => t.fitsMm), compromiseMm: most((t) => t.compromiseMm), tiltedMm: most((t) => t.tiltedMm), blocked };
  return standingAt(threshold, edgeMm, q);
}

/** The parts of a project, alternatives of each other together. */
function groupsOf(study: Study, project: Project): Map<string, Part[]> {
  const groups = new Map<string, Part[]>();
  for (const part of partsOf(study, project)) {
    const key = part.any_of ? `any of ${part.any_of}` : part.id;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return groups;
}

const counts = (s: Standing, q: Question) => s.light === 'lit' || (q.compromise && s.light === 'half');

/** A part that a larger size would win. */
export interface NextPart {
  part: Part;
  project: Project;
  missMm: number;
  needMm: number;
  /** The project is complete once this part is made. */
  completes: boolean;
}

export function nextParts(study: Study, edgeMm: number, q: Question, atMost: number): NextPart[] {
  const found: NextPart[] = [];
  for (const project of workOf(study)) {
    const open = openParts(project, edgeMm, q, study);
    for (const { part, s } of open) {
      if (s.blocked) continue;
      const completes = open.every((o) => o.part === part || (!o.s.blocked && o.s.needMm <= s.needMm));
      found.push({ part, project, missMm: s.needMm - edgeMm, needMm: s.needMm, completes });
    }
  }
  return found.sort((a, b) => a.needMm - b.needMm || a.part.id.localeCompare(b.part.id)).slice(0, atMost);
}

/** The parts a project still lacks; of alternatives the smallest, and none where one is made. */
function openParts(project: Project, edgeMm: number, q: Question, study: Study) {
  const better = (a: Standing, b: Standing) => Number(!!a.blocked) - Number(!!b.blocked) || a.needMm - b.needMm;
  return [...groupsOf(study, project).values()]
    .map((group) => group.map((part) => ({ part, s: standing(part.need, edgeMm, q, study) })))
    .filter((group) => !group.some((g) => counts(g.s, q)))
    .map((group) => group.sort((a, b) => better(a.s, b.s))[0]);
}

/** The share of projects one of the study's machines really takes, by its own verdicts. */
export function ownCount(study: Study, machine: Machine, q: Question): number {
  const index = study.machines.indexOf(machine);
  return workOf(study).filter((p) => {
    const v = p.verdicts[index];
    const takes = v.counts_as === 'fits' || (q.compromise && v.counts_as === 'compromise');
    return takes && (q.curve.kind === 'fits' || v.can_make);
  }).length;
}

export interface Sentence {
  answer: string;
  doubt: string;
}

/** The finding at one edge length, in words. */
export function sentence(study: Study, edgeMm: number, q: Question): Sentence {
  const step = stepAt(q.curve, edgeMm);
  const total = workOf(study).length;
  const verb = q.curve.kind === 'fits' ? 'holds' : 'can make';
  const made = step ? shareOf(step, q) : null;
  const answer = `A ${mm(edgeMm)} machine ${verb} ${count(made?.count ?? 0)} of ${plural(total, 'project')}`;
  if (!step || !made) return { answer, doubt: `No project is that small; the sample is ${plural(total, 'project')}.` };
  const withCompromise = step.with_compromise.count - step.fits.count;
  const doubt = `${percent(made.share)} of this work; of all work like it ${between(made)}`
    + ` (${confidence(study)} interval from a sample of ${plural(total, 'project')}).`;
  return { answer, doubt: withCompromise > 0 ? `${doubt} ${compromiseWords(withCompromise, made.count, q)}` : doubt };
}

function compromiseWords(n: number, made: number, q: Question): string {
  if (!q.compromise) return `${count(n)} more with a compromise: tilted or scaled.`;
  if (n === made) return n === 1 ? 'It needs a compromise: tilted or scaled.' : 'All need a compromise: tilted or scaled.';
  return `${count(n)} of the ${count(made)} only with a compromise: tilted or scaled.`;
}

export function curveName(study: Study, curve: Curve): string {
  const names = study.machines.filter((m) => curve.like.includes(m.id)).map((m) => m.name);
  return names.join(', ');
}
