import { Color, DoubleSide, ReplaceStencilOp, ShaderMaterial, type Side, Vector3, Vector4 } from 'three';
import type { Machine } from '../../study';
import { surfaceOutline, usableOutline } from './outline';

const PLANES_AT_MOST = 32;
const KEEP_OUTS_AT_MOST = 8;

const vertexShader = /* glsl */ `
  varying vec3 seen;
  varying vec3 placed;
  void main() {
    vec4 world = modelMatrix * vec4(position, 1.0);
    placed = world.xyz;
    vec4 view = viewMatrix * world;
    seen = view.xyz;
    gl_Position = projectionMatrix * view;
  }`;

/**
 * Flat faces from the screen's own slopes; what lies outside the usable volume or in a keep-out is striped in the second colour. A
 * piece is open where it was cut: where the nearest of its surface is seen from behind, the eye looks through a cut face. The insides
 * are coloured as that face, hatched, so that the piece is seen to be solid whatever the mesh.
 */
const fragmentShader = /* glsl */ `
  uniform vec3 inside;
  uniform vec3 outside;
  uniform vec3 stripe;
  uniform float radius;
  uniform vec2 heights;
  uniform int planeCount;
  uniform vec4 planes[${PLANES_AT_MOST}];
  uniform int keepOutCount;
  uniform vec3 keepOutLow[${KEEP_OUTS_AT_MOST}];
  uniform vec3 keepOutHigh[${KEEP_OUTS_AT_MOST}];
  uniform bool cap;
  uniform vec3 cutNormal;
  uniform vec2 cutHeights;
  uniform vec3 capLine;
  varying vec3 seen;
  varying vec3 placed;
  const float TOLERANCE_MM = 0.05;
  void main() {
    vec3 at = placed;
    vec3 normal = normalize(cross(dFdx(seen), dFdy(seen)));
    if (cap) {
      vec3 ray = placed - cameraPosition;
      float climb = dot(cutNormal, ray);
      float enters = ((climb > 0.0 ? cutHeights.x : cutHeights.y) - dot(cutNormal, cameraPosition)) / climb;
      if (enters > 0.0 && enters < 1.0) {
        at = cameraPosition + enters * ray;
        normal = normalize((viewMatrix * vec4(climb > 0.0 ? -cutNormal : cutNormal, 0.0)).xyz);
      }
    }
    float beyond = max(heights.x - at.z, at.z - heights.y);
    if (radius > 0.0) beyond = max(beyond, length(at.xy) - radius);
    for (int i = 0; i < ${PLANES_AT_MOST}; i++) {
      if (i >= planeCount) break;
      beyond = max(beyond, planes[i].w - dot(planes[i].xyz, at));
    }
    for (int i = 0; i < ${KEEP_OUTS_AT_MOST}; i++) {
      if (i >= keepOutCount) break;
      vec3 inner = min(at - keepOutLow[i], keepOutHigh[i] - at);
      beyond = max(beyond, min(inner.x, min(inner.y, inner.z)));
    }
    float light = 0.68 + 0.34 * dot(normal, normalize(vec3(-0.35, 0.65, 0.7))) + 0.06 * normal.z;
    vec3 colour = inside;
    if (cap) colour = mix(stripe, capLine, step(0.72, fract((gl_FragCoord.x - gl_FragCoord.y) / 7.0)));
    if (beyond > TOLERANCE_MM) {
      float band = step(0.55, fract((gl_FragCoord.x + gl_FragCoord.y) / 9.0));
      colour = mix(outside, stripe, 0.35 * band);
    }
    gl_FragColor = vec4(colour * clamp(light, 0.4, 1.1), 1.0);
  }`;

/** The faces that a piece was cut at, in the build volume: their normal and the heights along it. */
export interface CutFaces {
  normal: number[];
  heights: [number, number];
}

/** Where a cut face is seen the stencil holds this. */
export const CAP_STENCIL = 1;

/**
 * @param cut Of a piece, whose outside and inside are drawn apart.
 * @param side Which triangles to draw.
 * @param cap They are the insides, coloured as the cut faces.
 */
export function partMaterial(machine: Machine, cut: CutFaces | null, side: Side = DoubleSide, cap = false): ShaderMaterial {
  const v = machine.build_volume;
  const outline = usableOutline(machine) ?? surfaceOutline(v);
  const round = v.shape === 'cylinder';
  const planes = round ? [] : outline.slice(0, PLANES_AT_MOST).map((a, i) => {
    const b = outline[(i + 1) % outline.length];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const n = new Vector3(-(b[1] - a[1]) / length, (b[0] - a[0]) / length, 0);
    return new Vector4(n.x, n.y, 0, n.x * a[0] + n.y * a[1]);
  });
  const keepOuts = machine.keep_outs_mm.slice(0, KEEP_OUTS_AT_MOST);
  const filled = (points: number[][]) =>
    Array.from({ length: KEEP_OUTS_AT_MOST }, (_, i) => new Vector3(...(points[i] ?? [0, 0, 0])));
  return new ShaderMaterial({
    vertexShader,
    fragmentShader,
    side,
    stencilWrite: cut !== null,
    stencilRef: cap ? CAP_STENCIL : 0,
    stencilZPass: ReplaceStencilOp,
    polygonOffset: true,
    polygonOffsetFactor: cap ? 2 : 1,
    polygonOffsetUnits: cap ? 4 : 1,
    uniforms: {
      inside: { value: new Color() },
      outside: { value: new Color() },
      stripe: { value: new Color() },
      capLine: { value: new Color() },
      cap: { value: cap },
      cutNormal: { value: new Vector3(...(cut?.normal ?? [0, 0, 1])) },
      cutHeights: { value: cut?.heights ?? [0, 0] },
      keepOutCount: { value: keepOuts.length },
      keepOutLow: { value: filled(keepOuts.map((k) => k.min)) },
      keepOutHigh: { value: filled(keepOuts.map((k) => k.max)) },
      radius: { value: round ? Math.hypot(outline[0][0], outline[0][1]) : 0 },
      heights: { value: [0, v.height_mm - (machine.margins_mm?.top ?? 0)] },
      planeCount: { value: planes.length },
      planes: { value: [...planes, ...Array.from({ length: PLANES_AT_MOST - planes.length }, () => new Vector4())] },
    },
  });
}
