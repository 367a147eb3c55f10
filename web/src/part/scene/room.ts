import {
  BoxGeometry, BufferGeometry, DoubleSide, EdgesGeometry, Float32BufferAttribute, Group, LineBasicMaterial, LineDashedMaterial,
  LineSegments, Mesh, MeshBasicMaterial, Shape, ShapeGeometry,
} from 'three';
import type { Machine } from '../../study';
import { boundsOf, surfaceOutline, usableOutline } from './outline';

export interface RoomColours {
  ink: string;
  soft: string;
  rule: string;
  sheet: string;
  warn: string;
}

export type Side = 'front' | 'back' | 'left' | 'right';

const SMALL_TICK_MM = 10;
const LARGE_TICK_MM = 50;

/** The build volume as a drawing: surface, edges, a rule along two sides, margins in dashes, keep-outs. */
export function drawRoom(machine: Machine, colours: RoomColours): Group {
  const room = new Group();
  const v = machine.build_volume;
  const outline = surfaceOutline(v);
  const surface = new Mesh(
    new ShapeGeometry(shapeOf(outline)),
    new MeshBasicMaterial({ color: colours.sheet, side: DoubleSide, polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 }),
  );
  surface.name = 'surface';
  room.add(surface, frame(outline, v.height_mm, v.shape === 'cylinder' ? 24 : 1, colours.soft), ...rules(outline, colours.ink));
  const usable = usableOutline(machine);
  if (usable) room.add(dashes(usable, v.height_mm - machine.margins_mm.top, colours.soft));
  for (const box of machine.keep_outs_mm ?? []) room.add(keepOut(box, colours.warn));
  return room;
}

function shapeOf(outline: number[][]): Shape {
  const shape = new Shape();
  outline.forEach(([x, y], i) => (i ? shape.lineTo(x, y) : shape.moveTo(x, y)));
  return shape.closePath();
}

const lines = (points: number[]) => new BufferGeometry().setAttribute('position', new Float32BufferAttribute(points, 3));

function ring(outline: number[][], z: number): number[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length];
    return [a[0], a[1], z, b[0], b[1], z];
  });
}

function frame(outline: number[][], height: number, uprightEvery: number, colour: string): LineSegments {
  const uprights = outline.filter((_, i) => i % uprightEvery === 0).flatMap(([x, y]) => [x, y, 0, x, y, height]);
  return new LineSegments(lines([...ring(outline, 0), ...ring(outline, height), ...uprights]), new LineBasicMaterial({ color: colour }));
}

/**
 * Ticks every 10 mm, longer ones every 50 mm, along each side: the same rule as the size line's. The stage shows those of
 * the two sides that the eye is on, by their names.
 */
function rules(outline: number[][], colour: string): LineSegments[] {
  const { x0, x1, y0, y1 } = boundsOf(outline);
  const ticks = (length: number) => Array.from({ length: Math.floor(length / SMALL_TICK_MM) + 1 }, (_, i) => i * SMALL_TICK_MM);
  const long = (v: number) => (v % LARGE_TICK_MM === 0 ? 9 : 4);
  const sides: Record<Side, number[]> = {
    front: ticks(x1 - x0).flatMap((x) => [x0 + x, y0, 0, x0 + x, y0 - long(x), 0]),
    back: ticks(x1 - x0).flatMap((x) => [x0 + x, y1, 0, x0 + x, y1 + long(x), 0]),
    left: ticks(y1 - y0).flatMap((y) => [x0, y0 + y, 0, x0 - long(y), y0 + y, 0]),
    right: ticks(y1 - y0).flatMap((y) => [x1, y0 + y, 0, x1 + long(y), y0 + y, 0]),
  };
  return Object.entries(sides).map(([name, points]) => {
    const side = new LineSegments(lines(points), new LineBasicMaterial({ color: colour }));
    side.name = name;
    return side;
  });
}

function dashes(outline: number[][], height: number, colour: string): LineSegments {
  const material = new LineDashedMaterial({ color: colour, dashSize: 4, gapSize: 4 });
  return new LineSegments(lines([...ring(outline, 0.3), ...ring(outline, height)]), material).computeLineDistances();
}

function keepOut(box: { min: number[]; max: number[] }, colour: string): Group {
  const size = box.max.map((m, i) => m - box.min[i]);
  const geometry = new BoxGeometry(size[0], size[1], size[2]);
  const body = new Mesh(geometry, new MeshBasicMaterial({ color: colour, transparent: true, opacity: 0.28, depthWrite: false }));
  const edges = new LineSegments(new EdgesGeometry(geometry), new LineBasicMaterial({ color: colour }));
  const group = new Group().add(body, edges);
  group.position.set(box.min[0] + size[0] / 2, box.min[1] + size[1] / 2, box.min[2] + size[2] / 2);
  return group;
}
