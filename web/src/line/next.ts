import type { Part, Study } from '../study';
import { mm, missing } from '../common/format';
import { amountOf } from './saying';
import { machineOf, nextParts, shareOf, stepAt, type Question } from './question';

/** What the handle would win further on. */
export interface NextWin {
  key: string;
  /** Whose picture stands beside it. */
  part: Part | null;
  name: string;
  of: string;
  miss: string;
  needs: string;
  at: number;
}

/** On the size line the parts that a larger machine would hold, on the price line the machines that take more. */
export function nextWins(study: Study, at: number, q: Question, atMost: number): NextWin[] {
  if (q.axis.kind === 'price') return dearer(study, at, q).slice(0, atMost);
  return nextParts(study, at, q, atMost).map((n) => ({
    key: n.part.id,
    part: n.part,
    name: n.part.name,
    of:
      n.project.parts.length > 1
        ? `${n.project.name}${n.completes ? ', which it completes' : ''}`
        : 'a project of one part',
    miss: `${missing(n.missMm)} short`,
    needs: `needs ${mm(Math.ceil(n.needMm * 10) / 10)}`,
    at: Math.ceil(n.needMm),
  }));
}

function dearer(study: Study, at: number, q: Question): NextWin[] {
  const here = stepAt(q.curve, at);
  let most = here ? shareOf(here, q).count : 0;
  const wins: NextWin[] = [];
  for (const step of q.curve.steps) {
    const made = shareOf(step, q);
    if (step.at <= at || made.count <= most) continue;
    most = made.count;
    wins.push({
      key: `${step.at}`,
      part: null,
      name: study.machines.find((m) => m.id === machineOf(step, q))?.name ?? '',
      of: `takes ${amountOf(made.count, q.curve.total, q.counted)}`,
      miss: q.axis.short(step.at - at),
      needs: q.axis.needs(step.at),
      at: step.at,
    });
  }
  return wins;
}

export function nextTitle(q: Question, any: boolean): string {
  if (q.axis.kind === 'price')
    return any ? 'A dearer machine would win next' : 'No dearer machine of the study would win more';
  return any ? 'A larger size would win next' : 'No larger size would win more';
}
