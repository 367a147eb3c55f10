import type { Machine, Part, PartFit, Pose } from '../study';
import type { Body, Label, Patch } from './body';
import { reachesInto } from './keepOuts';
import { type Model, placePart, type WayKey } from './placing';
import { letDown, moved, signedVolume, sliceModel } from './slices';
import { keepOutSentences, patchLabels, touchPatches, touchSentences } from './touching';
import { drawnGaps, placedPoints, wallsOf } from './walls';

/** How a part is looked at on a machine. */
export interface Look {
  way: WayKey;
  /** In its own size, sticking out where it does. */
  full: boolean;
  /** 0 for all together. */
  piece: number;
  /** 0 … 100. */
  apart: number;
}

/** What a look at a part shows. */
export interface Showing {
  bodies: Body[];
  /** Of the whole part, or of the piece that is shown alone. */
  pose: Pose;
  patches: Patch[];
  labels: Label[];
  reachMm: number;
  /** Findings can be marked: the part is whole, in one place. */
  whole: boolean;
}

/** Pieces pulled all the way apart leave gaps of this share of a piece. */
const WIDEST_GAP = 0.7;

export function show(part: Part, machine: Machine, fit: PartFit, model: Model, look: Look): Showing {
  const base = placePart(model, fit, look.way, look.full, machine, part.growth);
  const cuts = look.way === 'best' ? fit.cuts : null;
  if (!cuts) return { bodies: [{ model, pose: base, slab: null }], pose: base, ...touches(machine, fit, model, base, look), reachMm: 0, whole: true };
  const inwards = signedVolume(model) < 0;
  const n = cuts.poses.length;
  const step = ((cuts.bounds_mm[n] - cuts.bounds_mm[0]) / n) * WIDEST_GAP * base.scale;
  const bodies = cuts.poses.map((pose, i): Body => {
    const slab = { direction: cuts.direction, fromMm: cuts.bounds_mm[i], toMm: cuts.bounds_mm[i + 1], inwards };
    const piece = sliceModel(model, slab);
    return {
      model: piece,
      slab,
      pose: look.piece > 0 ? letDown(piece, pose) : moved(base, cuts.direction, (step * look.apart * (i - (n - 1) / 2)) / 100),
    };
  });
  if (look.piece > 0) {
    const alone = bodies[look.piece - 1];
    return { bodies: [alone], pose: alone.pose, ...touches(machine, null, alone.model, alone.pose, look), reachMm: 0, whole: false };
  }
  const reachMm = (step * n) / WIDEST_GAP / 2 + (step * (n - 1)) / 2;
  const whole = look.apart === 0;
  const touching = touches(machine, fit, model, base, look);
  return { bodies, pose: base, ...(whole ? touching : { patches: [], labels: [] }), reachMm, whole };
}

function touches(machine: Machine, fit: PartFit | null, model: Model, pose: Pose, look: Look): { patches: Patch[]; labels: Label[] } {
  const walls = wallsOf(machine);
  const points = placedPoints(model, pose);
  const gaps = (fit && provedGaps(fit, look)) ?? drawnGaps(walls, points);
  const patches = touchPatches(walls, gaps, points);
  return { patches, labels: patchLabels(patches) };
}

/** The gaps that were reckoned from the part itself; they are those of the verdict's pose. */
function provedGaps(fit: PartFit, look: Look): readonly number[] | null {
  const shown = look.way === 'best' && (look.full || fit.verdict === 'scaled');
  return shown && fit.gaps_mm.length > 0 ? fit.gaps_mm : null;
}

/** What touches and what sticks out, in words. Without a model only the verdict's pose is known. */
export function touchWords(machine: Machine, fit: PartFit, showing: Showing | null, model: Model | null, look: Look): string[] {
  const walls = wallsOf(machine);
  const alone = fit.cuts && look.way === 'best' && look.piece > 0;
  const known = alone ? null : provedGaps(fit, look);
  if (!showing || !model) return known ? touchSentences(walls, known, false) : [];
  const body = alone ? showing.bodies[0] : { model, pose: showing.pose };
  const points = placedPoints(body.model, body.pose);
  return [
    ...touchSentences(walls, known ?? drawnGaps(walls, points), known === null),
    ...keepOutSentences(reachesInto(machine, body.model, points)),
  ];
}
