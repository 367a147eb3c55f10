import type { Machine, Study } from '../study';

const known = new WeakMap<Study, { shared: string; short: Map<string, string> }>();

/** Machine names without the words that all of them begin with: drawings have little room. */
function namesOf(study: Study) {
  let names = known.get(study);
  if (!names) {
    const words = study.machines.map((m) => m.name.split(' '));
    let shared = 0;
    const differs = (i: number) => words.some((w) => w.length <= i + 1 || w[i] !== words[0][i]);
    while (words.length > 1 && !differs(shared)) shared++;
    const short = new Map(study.machines.map((m, i) => [m.id, words[i].slice(shared).join(' ')]));
    known.set(study, (names = { shared: words[0]?.slice(0, shared).join(' ') ?? '', short }));
  }
  return names;
}

export const shortName = (study: Study, machine: Machine) => namesOf(study).short.get(machine.id) ?? machine.name;

/** The words that short names leave out; empty where there are none. */
export const sharedWords = (study: Study) => namesOf(study).shared;
