import type { Sizing } from './sizing';

/** What study.json says, as the page reads it. Mirrors src/Platewright.Study/Documents/StudyDocument.cs. */
export type Maybe<T> = T | null | undefined;

export interface Study {
  format: number;
  name: string;
  headline: string;
  options: { tight_mm: number; least_scale: number; bead_width_mm: number; confidence: number; tolerance: number };
  machines: Machine[];
  projects: Project[];
  parts: Part[];
  curves: Curve[];
  alike: { kind: 'same' | 'scaled' | 'mirrored'; parts: string[]; scale?: Maybe<number>; message: string }[];
  unusable: { file: string; error: string }[];
  /** Null where no project could be judged. */
  sizing?: Maybe<Sizing>;
  notes: string[];
  /** Cautions that stand near the power; where absent they are among the notes. */
  cautions?: Maybe<string[]>;
  seconds: number;
}

/** A count of projects, its share, and the share's Wilson interval. */
export interface Share {
  count: number;
  share: number;
  low: number;
  high: number;
}

export interface Heat {
  nozzle_c: number;
  bed_c: number;
  chamber_c: number;
}

export interface Machine {
  id: string;
  name: string;
  generic: boolean;
  build_volume: BuildVolume;
  margins_mm: { left: number; right: number; front: number; back: number; top: number };
  keep_outs_mm: { min: number[]; max: number[] }[];
  heats_to?: Maybe<Heat>;
  enclosed?: Maybe<boolean>;
  price?: Maybe<{ amount: number; currency: string }>;
  footprint_mm?: Maybe<number[]>;
  note?: Maybe<string>;
  /** Edge of the cube with its usable volume, mm. */
  edge_mm: number;
  coverage: { projects: number; fits: Share; compromise: Share; no: Share; can_make: Share; deciding_parts: string[] };
  builds?: Maybe<Builds>;
  cycles?: Maybe<Cycle[]>;
}

/** Everything a machine can make, one build for each copy. */
export interface Builds {
  parts: number;
  time_s: number;
  low_time_s: number;
  high_time_s: number;
  /** Share of the time that is warm-up and release. */
  warm_up_share: number;
  mass_g: number;
  energy_kwh?: Maybe<number>;
  peak_power_w?: Maybe<number>;
}

/** Warm-up, one hour of building, cooling down. */
export interface Cycle {
  material: string;
  warm_up_s: number;
  hold_w: number;
  peak_w: number;
  release_s?: Maybe<number>;
  vented: boolean;
  /** Rows of time s, nozzle °C, bed °C, chamber °C, power W. */
  points: (number | null)[][];
}

export interface BuildVolume {
  shape: 'box' | 'cylinder' | 'prism';
  size_mm?: Maybe<number[]>;
  diameter_mm?: Maybe<number>;
  polygon_mm?: Maybe<number[][]>;
  height_mm: number;
}

export type Verdict = 'as_drawn' | 'turned' | 'tilted' | 'scaled' | 'in_pieces' | 'no';
export type CountsAs = 'fits' | 'compromise' | 'no';

export interface Project {
  id: string;
  name: string;
  wanted: boolean;
  parts: string[];
  verdicts: ProjectVerdict[];
  need?: Maybe<Need>;
  /** The machine whose printed parts these are: in no share and no curve. */
  printed_parts_of?: Maybe<string>;
}

export interface ProjectVerdict {
  machine: string;
  verdict: Verdict;
  counts_as: CountsAs;
  can_make: boolean;
  tight: boolean;
  decided_by?: Maybe<string>;
  reason: string;
}

/** The smallest cubes that hold it, mm. */
export interface Need {
  cube_turned_mm: number;
  cube_tilted_mm?: Maybe<number>;
  cube_scaled_mm?: Maybe<number>;
  cube_tilted_at_least_mm?: Maybe<number>;
  turned_curve_mm: number[][];
  tilted_curve_mm: number[][];
  heat?: Maybe<Heat>;
  thinnest_wall_mm?: Maybe<number>;
}

export interface Part {
  id: string;
  name: string;
  project: string;
  file?: Maybe<string>;
  object?: Maybe<string>;
  wanted: boolean;
  quantity: number;
  material?: Maybe<string>;
  colour?: Maybe<string>;
  any_of?: Maybe<string>;
  allowed: { turn: boolean; tilt: boolean; scale: boolean; cut: boolean; least_scale: number };
  size_mm: number[];
  tightest_box_mm: number[];
  volume_mm3?: Maybe<number>;
  triangles: number;
  closed: boolean;
  thinnest_wall_mm?: Maybe<number>;
  findings: { code: string; count: number; message: string }[];
  need: Need;
  fits: PartFit[];
  model?: Maybe<ViewModel>;
  picture?: Maybe<string>;
}

/** A light mesh: base64 of little-endian uint16, points in steps from `low_mm`, and three points for each triangle. */
export interface ViewModel {
  low_mm: number[];
  step_mm: number;
  positions: string;
  corners: string;
}

export interface PartFit {
  machine: string;
  verdict: Verdict;
  counts_as: CountsAs;
  tight: boolean;
  can_make: boolean;
  proved: boolean;
  pieces: number;
  reasons: string[];
  as_drawn: Way;
  upright: Way;
  turned: Way;
  tilted: Way;
  clearance_mm: number;
  pose: Pose;
  estimate?: Maybe<Estimate>;
}

/** What building a part once takes. */
export interface Estimate {
  recipe: string;
  material: string;
  material_assumed: boolean;
  pose: { way: 'as_drawn' | 'turned' | 'tilted' | 'scaled'; scale: number; contact_mm2: number; overhang_mm2: number };
  layers: number;
  time_s: StageSeconds;
  material_mm3: number;
  support_mm3: number;
  mass_g: number;
  spools: number;
  energy_kwh?: Maybe<{ total: number; warm_up: number; hold: number; motion: number; base: number }>;
  peak_power_w?: Maybe<number>;
  relative_error: number;
  time_error: ModelError;
  energy_error: ModelError;
  warp?: Maybe<{ rank: string; sentence: string }>;
  fit_cost?: Maybe<string>;
  /** Null where no project could be judged. */
  sizing?: Maybe<Sizing>;
  notes: string[];
}

/** Seconds by what they are for; they add up to the total. */
export interface StageSeconds {
  total: number;
  warm_up: number;
  walls?: Maybe<number>;
  solid_faces?: Maybe<number>;
  infill?: Maybe<number>;
  support?: Maybe<number>;
  brim?: Maybe<number>;
  travel: number;
  waiting: number;
  changes: number;
  release: number;
}

/** Shares below and above an estimate, 95 %. */
export interface ModelError {
  low: number;
  high: number;
  source: string;
}

export interface Way {
  fits: boolean;
  largest_scale: number;
  upper_bound?: Maybe<number>;
  rotation?: Maybe<number[]>;
  translation_mm?: Maybe<number[]>;
}

/** Scale first, then rotate (unit quaternion w, x, y, z), then translate, mm. */
export interface Pose {
  scale: number;
  rotation: number[];
  translation_mm: number[];
}

export interface Curve {
  kind: 'fits' | 'can_make';
  heat?: Maybe<Heat>;
  like: string[];
  steps: CurveStep[];
}

export interface CurveStep {
  edge_mm: number;
  fits: Share;
  with_compromise: Share;
}
