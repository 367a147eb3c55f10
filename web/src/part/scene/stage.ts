import {
  BackSide, BufferAttribute, BufferGeometry, Color, ColorManagement, EdgesGeometry, FrontSide, Group, LineBasicMaterial,
  LinearSRGBColorSpace, LineSegments, type Material, Matrix4, Mesh, MeshBasicMaterial, NotEqualStencilFunc, type Object3D,
  PerspectiveCamera, Scene, type ShaderMaterial, Vector2, Vector3, WebGLRenderer,
} from 'three';
import type { Machine, Pose } from '../../study';
import type { Paint } from '../../common/paint';
import type { Body, Label, Mark, Patch } from '../body';
import { matrixOf } from '../placing';
import type { Slab } from '../slices';
import { boundsOf, surfaceOutline } from './outline';
import { CAP_STENCIL, type CutFaces, partMaterial } from './partMaterial';
import { drawMarks, drawPatches } from './patches';
import { drawRoom, type Side } from './room';

// Colours come from the page and go to the screen as they are.
ColorManagement.enabled = false;

const FIELD_OF_VIEW = 26;
const CREASE_DEGREES = 28;

/** Where the eye is: degrees about the vertical, degrees above the surface, and distance as a multiple of the fitting one. */
export interface View {
  turn: number;
  lift: number;
  away: number;
}

export const firstView: View = { turn: -32, lift: 24, away: 1 };

/** Middles of the three dimension lines, in pixels of the canvas. */
export type Dimensions = { axis: 'x' | 'y' | 'z'; mm: number; left: number; top: number }[];

/** Labels where they are seen, in pixels of the canvas. */
export type SeenLabels = { label: Label; left: number; top: number }[];

/** What is in the build volume. */
export interface Contents {
  bodies: readonly Body[];
  patches: readonly Patch[];
  marks: readonly Mark[];
  /** Half the size of what must be in the picture besides the build volume, mm. */
  reachMm: number;
}

/** Size of a mark as a share of what is shown. */
const MARK_SHARE = 0.02;

/** Draws one part or its pieces in one build volume, when asked and not before. */
export class Stage {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly camera = new PerspectiveCamera(FIELD_OF_VIEW, 1, 1, 20000);
  private content = new Group();
  private middle = new Vector3();
  private reach = 1;
  private machine: Machine | null = null;

  constructor(canvas: HTMLCanvasElement) {
    this.renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true, preserveDrawingBuffer: true, stencil: true });
    this.renderer.outputColorSpace = LinearSRGBColorSpace;
    this.camera.up.set(0, 0, 1);
  }

  resize(width: number, height: number) {
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
  }

  show(machine: Machine, { bodies, patches, marks, reachMm }: Contents, paint: Paint) {
    dispose(this.content);
    this.scene.clear();
    this.machine = machine;
    const { x0, x1, y0, y1 } = boundsOf(surfaceOutline(machine.build_volume));
    const height = machine.build_volume.height_mm;
    this.middle.set((x0 + x1) / 2, (y0 + y1) / 2, height * 0.46);
    this.reach = Math.max(reachMm, Math.hypot(x1 - x0, y1 - y0, height) / 2);
    this.content = new Group().add(drawRoom(machine, paint), ...bodies.flatMap((body) => drawBody(machine, body, paint)));
    this.content.add(drawPatches(patches, paint), drawMarks(marks, this.reach * MARK_SHARE, paint.cursor));
    this.scene.add(this.content);
  }

  render(view: View): Dimensions {
    const narrow = Math.min(1, this.camera.aspect);
    const distance = (view.away * this.reach * 0.94) / Math.sin((FIELD_OF_VIEW / 2) * (Math.PI / 180)) / narrow;
    const turn = ((view.turn - 90) * Math.PI) / 180;
    const lift = (view.lift * Math.PI) / 180;
    this.camera.position.set(
      this.middle.x + distance * Math.cos(lift) * Math.cos(turn),
      this.middle.y + distance * Math.cos(lift) * Math.sin(turn),
      this.middle.z + distance * Math.sin(lift),
    );
    this.camera.lookAt(this.middle);
    this.showNearSides();
    const surface = this.content.getObjectByName('surface');
    if (surface) surface.visible = this.camera.position.z > 0;
    this.renderer.render(this.scene, this.camera);
    return this.dimensions();
  }

  close() {
    dispose(this.content);
    this.renderer.dispose();
  }

  private near(side: Side): boolean {
    const away = this.camera.position.clone().sub(this.middle);
    return { front: away.y <= 0, back: away.y > 0, left: away.x <= 0, right: away.x > 0 }[side];
  }

  private showNearSides() {
    for (const side of ['front', 'back', 'left', 'right'] as const) {
      const rule = this.content.getObjectByName(side);
      if (rule) rule.visible = this.near(side);
    }
  }

  /** Where labels are seen after the last drawing. */
  place(labels: readonly Label[]): SeenLabels {
    return labels.map((label) => ({ label, ...this.seen(label.at[0], label.at[1], label.at[2]) }));
  }

  private seen(x: number, y: number, z: number): { left: number; top: number } {
    const size = this.renderer.getSize(new Vector2());
    const p = new Vector3(x, y, z).project(this.camera);
    return { left: ((p.x + 1) / 2) * size.x, top: ((1 - p.y) / 2) * size.y };
  }

  /** Width and depth on the near sides; height at the leftmost upright. */
  private dimensions(): Dimensions {
    if (!this.machine) return [];
    const { x0, x1, y0, y1 } = boundsOf(surfaceOutline(this.machine.build_volume));
    const height = this.machine.build_volume.height_mm;
    const project = (x: number, y: number, z: number) => this.seen(x, y, z);
    const off = this.reach * 0.13;
    const uprights = [[x0, y0], [x0, y1], [x1, y0], [x1, y1]].map(([x, y]) => project(x, y, height * 0.6));
    const leftmost = uprights.sort((a, b) => a.left - b.left)[0];
    return [
      { axis: 'x', mm: x1 - x0, ...project((x0 + x1) / 2, this.near('front') ? y0 - off : y1 + off, 0) },
      { axis: 'y', mm: y1 - y0, ...project(this.near('left') ? x0 - off : x1 + off, (y0 + y1) / 2, 0) },
      { axis: 'z', mm: height, left: Math.max(30, leftmost.left - 8), top: leftmost.top },
    ];
  }
}

function drawBody(machine: Machine, { model, pose, slab }: Body, paint: Paint): Object3D[] {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(model.positions, 3));
  geometry.setIndex(new BufferAttribute(model.corners, 1));
  const bodies = materialsOf(machine, pose, slab, paint).map((material) => new Mesh(geometry, material));
  const place = matrixFor(pose);
  // Edges on the insides of a piece lie behind its cut faces.
  const unseen = slab ? { stencilWrite: true, stencilRef: CAP_STENCIL, stencilFunc: NotEqualStencilFunc } : {};
  const creases = new LineSegments(
    new EdgesGeometry(geometry, CREASE_DEGREES), new LineBasicMaterial({ color: paint.edge, ...unseen }),
  );
  creases.renderOrder = 1;
  // Its own plan, pressed flat on the surface, shows where it stands.
  const plan = new Mesh(geometry, new MeshBasicMaterial({ color: paint.rule, polygonOffset: true, polygonOffsetFactor: 1.5 }));
  for (const object of [...bodies, creases, plan]) {
    object.matrixAutoUpdate = false;
    object.matrix.copy(place);
  }
  plan.matrix.premultiply(new Matrix4().makeScale(1, 1, 0).setPosition(0, 0, 0.12));
  return [plan, ...bodies, creases];
}

/** One for a whole part; one for the outside of a piece and one for its cut faces. */
function materialsOf(machine: Machine, pose: Pose, slab: Slab | null, paint: Paint): ShaderMaterial[] {
  const cut = slab && cutFaces(pose, slab);
  const [outside, inside] = slab?.inwards ? [BackSide, FrontSide] : [FrontSide, BackSide];
  const materials = cut
    ? [partMaterial(machine, cut, outside), partMaterial(machine, cut, inside, true)]
    : [partMaterial(machine, null)];
  const colours = [['inside', paint.steel], ['outside', paint.cursor], ['stripe', paint.sheet], ['capLine', paint.edge]] as const;
  for (const { uniforms } of materials)
    for (const [name, colour] of colours) (uniforms[name].value as Color).setStyle(colour);
  return materials;
}

/** The cutting planes where the pose puts them. */
function cutFaces(pose: Pose, slab: Slab): CutFaces {
  const normal = matrixOf(pose.rotation).map((row) => row.reduce((sum, r, i) => sum + r * slab.direction[i], 0));
  const offset = normal.reduce((sum, n, i) => sum + n * pose.translation_mm[i], 0);
  return { normal, heights: [offset + pose.scale * slab.fromMm, offset + pose.scale * slab.toMm] };
}

function matrixFor(pose: Pose): Matrix4 {
  const [r0, r1, r2] = matrixOf(pose.rotation).map((row) => row.map((v) => v * pose.scale));
  const t = pose.translation_mm;
  return new Matrix4().set(...[...r0, t[0]] as [number, number, number, number], ...[...r1, t[1]] as [number, number, number, number],
    ...[...r2, t[2]] as [number, number, number, number], 0, 0, 0, 1);
}

function dispose(root: Object3D) {
  root.traverse((object) => {
    if (object instanceof Mesh || object instanceof LineSegments) {
      object.geometry.dispose();
      (object.material as Material).dispose();
    }
  });
}
