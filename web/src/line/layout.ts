import type { Machine, Study } from '../study';
import { price } from '../common/format';
import { textWidth } from '../common/measure';
import { shortName } from '../common/names';
import { placeLabels, spreadMarks, type Placed } from './labels';
import { ownAmount, type Question } from './question';
import { amountOf } from './saying';
import type { Domain } from './scale';

export const NAME_PX = 14;
export const PRICE_PX = 12;
const LANE_PX = 38;
const LANES = 5;
/** Below this width machines are marked by letters, and a list below the line names them. */
const ROOM_FOR_NAMES_PX = 620;
export const RULE_PX = 40;
export const TAG_PX = 34;

export interface MachineMark {
  machine: Machine;
  name: string;
  letter: string;
  own: number;
  x: number;
  y: number;
  /** Where the letter stands when there is no room for names. */
  letterY: number;
  detail: string;
  label: Placed | null;
}

export interface LineLayout {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
  laneTop: (lane: number) => number;
  x: (at: number) => number;
  y: (share: number) => number;
  at: (x: number) => number;
  marks: MachineMark[];
  named: boolean;
}

export function layoutLine(study: Study, q: Question, domain: Domain, width: number): LineLayout {
  const narrow = width < ROOM_FOR_NAMES_PX;
  const left = narrow ? 40 : 52;
  const right = width - (narrow ? 12 : 40);
  const x = (at: number) => left + ((right - left) * (at - domain.from)) / (domain.to - domain.from);
  const total = q.curve.total > 0 ? q.curve.total : 1;
  const stands = (m: Machine) => q.axis.of(m) ?? 0;
  const order = study.machines.filter((m) => q.axis.of(m) != null).sort((a, b) => stands(a) - stands(b));
  const details = order.map((m) => {
    const own = ownAmount(study, m, q);
    return { own, text: [price(m), amountOf(own, total, q.counted)].filter(Boolean).join(' · ') };
  });
  const labels = narrow
    ? null
    : placeLabels(
        order.map((m, i) => ({
          x: x(stands(m)),
          width: Math.max(textWidth(shortName(study, m), NAME_PX, 600), textWidth(details[i].text, PRICE_PX)) + 4,
        })),
        left,
        width - 2,
        LANES,
      );
  const lanes = labels ? Math.max(0, ...labels.map((l) => l.lane + 1)) : 0;
  const top = lanes * LANE_PX + 18;
  const bottom = top + (narrow ? 220 : 290);
  const y = (share: number) => bottom - (bottom - top) * share;
  const points = order.map((m, i) => ({ x: x(stands(m)), y: y(details[i].own / total) }));
  const letters = spreadMarks(points, 19);
  return {
    width,
    left,
    right,
    top,
    bottom,
    x,
    y,
    height: bottom + RULE_PX + TAG_PX + 4,
    laneTop: (lane) => top - 18 - (lane + 1) * LANE_PX + 4,
    at: (px) => domain.from + ((px - left) / (right - left)) * (domain.to - domain.from),
    named: labels !== null,
    marks: order.map((machine, i) => ({
      machine,
      name: shortName(study, machine),
      letter: String.fromCharCode(65 + (i % 26)),
      own: details[i].own,
      ...points[i],
      letterY: letters[i].y,
      detail: details[i].text,
      label: labels?.[i] ?? null,
    })),
  };
}

/** Where the count beside the handle's dot stands clear of machines and of the plot's edges. */
export function placeCount(l: LineLayout, x: number, y: number, width: number): { x: number; y: number } {
  const HEIGHT = 16;
  const places = [-10, 24, -32, 46].flatMap((dy) => [
    { x: x + 12, y: y + dy },
    { x: x - 12 - width, y: y + dy },
  ]);
  const clear = (p: { x: number; y: number }) =>
    p.x >= l.left &&
    p.x + width <= l.right &&
    p.y < l.bottom - 12 &&
    p.y - HEIGHT > l.top - 16 &&
    l.marks.every((m) => {
      const markY = l.named ? m.y : m.letterY;
      const overMark = m.x > p.x - 11 && m.x < p.x + width + 11 && markY > p.y - HEIGHT - 9 && markY < p.y + 9;
      const overLeader = l.named && m.x > p.x - 3 && m.x < p.x + width + 3 && p.y - HEIGHT < m.y;
      return !overMark && !overLeader;
    });
  return places.find(clear) ?? places[x + 12 + width <= l.right ? 0 : 1];
}
