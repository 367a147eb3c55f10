import { Color, DoubleSide, ShaderMaterial, Vector3, Vector4 } from 'three';
import type { Machine } from '../../study';
import { surfaceOutline, usableOutline } from './outline';

const PLANES_AT_MOST = 32;

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

/** Flat faces from the screen's own slopes; what lies outside the usable volume is striped in the second colour. */
const fragmentShader = /* glsl */ `
  uniform vec3 inside;
  uniform vec3 outside;
  uniform vec3 stripe;
  uniform float radius;
  uniform vec2 heights;
  uniform int planeCount;
  uniform vec4 planes[${PLANES_AT_MOST}];
  varying vec3 seen;
  varying vec3 placed;
  const float TOLERANCE_MM = 0.05;
  void main() {
    float beyond = max(heights.x - placed.z, placed.z - heights.y);
    if (radius > 0.0) beyond = max(beyond, length(placed.xy) - radius);
    for (int i = 0; i < ${PLANES_AT_MOST}; i++) {
      if (i >= planeCount) break;
      beyond = max(beyond, planes[i].w - dot(planes[i].xyz, placed));
    }
    vec3 normal = normalize(cross(dFdx(seen), dFdy(seen)));
    float light = 0.68 + 0.34 * dot(normal, normalize(vec3(-0.35, 0.65, 0.7))) + 0.06 * normal.z;
    vec3 colour = inside;
    if (beyond > TOLERANCE_MM) {
      float band = step(0.55, fract((gl_FragCoord.x + gl_FragCoord.y) / 9.0));
      colour = mix(outside, stripe, 0.35 * band);
    }
    gl_FragColor = vec4(colour * clamp(light, 0.4, 1.1), 1.0);
  }`;

export function partMaterial(machine: Machine): ShaderMaterial {
  const v = machine.build_volume;
  const outline = usableOutline(machine) ?? surfaceOutline(v);
  const round = v.shape === 'cylinder';
  const planes = round ? [] : outline.slice(0, PLANES_AT_MOST).map((a, i) => {
    const b = outline[(i + 1) % outline.length];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const n = new Vector3(-(b[1] - a[1]) / length, (b[0] - a[0]) / length, 0);
    return new Vector4(n.x, n.y, 0, n.x * a[0] + n.y * a[1]);
  });
  return new ShaderMaterial({
    vertexShader,
    fragmentShader,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      inside: { value: new Color() },
      outside: { value: new Color() },
      stripe: { value: new Color() },
      radius: { value: round ? Math.hypot(outline[0][0], outline[0][1]) : 0 },
      heights: { value: [0, v.height_mm - (machine.margins_mm?.top ?? 0)] },
      planeCount: { value: planes.length },
      planes: { value: [...planes, ...Array.from({ length: PLANES_AT_MOST - planes.length }, () => new Vector4())] },
    },
  });
}
