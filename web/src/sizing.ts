import type { Maybe, Share } from './study';

/** Which machine or mix the work needs. Mirrors src/Platewright.Study/Documents/SizingDocument.cs. */
export interface Sizing {
  currency: string;
  workload: { sample: boolean; population?: Maybe<number>; projects: number; wanted: number; projects_per_month: number; rates_assumed: boolean; reckoned: number };
  place?: Maybe<Place>;
  aim: Aim;
  machines: SizedMachine[];
  levels: Level[];
  larger: Larger[];
  same_money: { one: MoneySide; many: MoneySide }[];
  break_evens: BreakEven[];
  mix?: Maybe<Mix>;
  front: FrontPoint[];
  orders: { project: string; copies: number; from: string; by: string; on: OrderOn[] }[];
  self_making: SelfMaking[];
  sensitivity: Sensitivity[];
  assumptions: { key: string; what: string; unit: string; value: number; low: number; high: number; source: string }[];
  sheet: Sheet;
}

export interface Place {
  attended_hours: number;
  nights: boolean;
  weekends: boolean;
  longest_unattended_h?: Maybe<number>;
  lesson_min?: Maybe<number>;
  longest_run_h?: Maybe<number>;
  exhaust?: Maybe<string>;
  low_emission_only: boolean;
}

export interface Aim {
  cover_share: number;
  budget?: Maybe<number>;
  floor_m2?: Maybe<number>;
  circuit_w?: Maybe<number>;
  loudest_db?: Maybe<number>;
  most_machines?: Maybe<number>;
  owned: string[];
}

export interface SizedMachine {
  machine: string;
  coverage: Measure[];
  without_wanted: Share;
  hours_per_month: number;
  hours_of_one: number;
  needed: number;
  floor_m2?: Maybe<number>;
  noise_db?: Maybe<number>;
  exhaust?: Maybe<string>;
  peak_w?: Maybe<number>;
  warm_up_s?: Maybe<number>;
  turn_round?: Maybe<TurnRound>;
  per_month?: Maybe<Cost>;
  upfront?: Maybe<number>;
  first_year?: Maybe<number>;
  low_per_month?: Maybe<number>;
  high_per_month?: Maybe<number>;
  per_project?: Maybe<number>;
}

export interface Measure {
  measure: 'parts' | 'projects' | 'projects_as_made' | 'hours' | 'mass';
  can_make?: Maybe<number>;
  low: number;
  high: number;
  fits?: Maybe<number>;
  fits_low: number;
  fits_high: number;
  left_out: number;
}

/** From the model changed to the part in hand; the mean is over moments at which somebody is there, waits included. */
export interface TurnRound {
  part: string;
  mean_s: number;
  best_s: number;
  worst_s: number;
  prepare_s: number;
  warm_up_s: number;
  build_s: number;
  release_s: number;
  take_off_s: number;
  iterations_per_day: number;
  fewest: number;
  most: number;
}

/** Line by line; `total` is their sum. */
export interface Cost {
  purchase: number;
  printed_parts: number;
  assembling: number;
  tuning: number;
  owning_tax: number;
  maintaining: number;
  wear: number;
  energy: number;
  filament: number;
  handling: number;
  failed_builds: number;
  work_tax: number;
  running: number;
  total: number;
}

export interface Level {
  share: number;
  projects: number;
  listed?: Maybe<string>;
  bundled?: Maybe<string>;
  cube_mm?: Maybe<number>;
  box_bed_mm?: Maybe<number>;
  box_height_mm?: Maybe<number>;
  /** Rows of bed and height, mm. */
  curve: number[][];
  decided_by?: Maybe<string>;
  misses_by_mm?: Maybe<number>;
}

/** Differences are larger less smaller. */
export interface Larger {
  smaller: string;
  larger: string;
  gained: number;
  lost: number;
  gained_names: string[];
  share: number;
  low: number;
  high: number;
  p: number;
  told_apart: boolean;
  more_projects?: Maybe<number>;
  sentence: string;
  hours_per_month?: Maybe<number>;
  price?: Maybe<number>;
  floor_m2?: Maybe<number>;
  warm_up_s?: Maybe<number>;
  kwh_per_month?: Maybe<number>;
  peak_w?: Maybe<number>;
}

export interface MoneySide {
  machine: string;
  count: number;
  price: number;
  can_make: number;
  projects: number;
  parts_per_week?: Maybe<number>;
  one_down_parts_per_week: number;
  first_in_hand_s?: Maybe<number>;
  all_in_hand_s?: Maybe<number>;
}

export interface BreakEven {
  first: string;
  second: string;
  projects: number;
  now_per_month: number;
  at_per_month?: Maybe<number>;
  low?: Maybe<number>;
  high?: Maybe<number>;
  draws_with_one: number;
  most_per_month: number;
  cheaper_now: string;
  surely: number;
  /** Rows of projects a month, cost of the first, cost of the second. */
  points: number[][];
}

export interface Mix {
  status: 'optimal' | 'within' | 'unreachable' | 'undecided' | 'no_room';
  within: number;
  machines: MixMachine[];
  aimed: number;
  covered: number;
  reachable: number;
  blocking: string[];
  per_month: number;
  owning_per_month: number;
  running_per_month: number;
  price: number;
  first_year: number;
  floor_m2: number;
  peak_w: number;
  not_made: string[];
  excluded: string[];
}

export interface MixMachine {
  machine: string;
  name: string;
  count: number;
  owned: number;
  hours_used: number;
  hours_of_one: number;
  price_each?: Maybe<number>;
}

export interface FrontPoint {
  counts: MixMachine[];
  covered: number;
  per_month: number;
  turn_round_h: number;
  floor_m2: number;
  peak_w: number;
  cheapest_for?: Maybe<number>;
}

export type Limit = 'none' | 'nights' | 'weekends' | 'unattended' | 'lesson' | 'rules' | 'attended' | 'machine_hours';

export interface OrderOn {
  machine: string;
  can_make: boolean;
  in_time: boolean;
  done: number;
  last_in_hand_s?: Maybe<number>;
  least_machines?: Maybe<number>;
  limit: Limit;
}

export interface SelfMaking {
  of: string;
  parts: number;
  alone: string[];
  together: string[][];
  missing: string[];
  cost?: Maybe<number>;
  hours?: Maybe<number>;
}

export interface Sensitivity {
  assumption: string;
  what: string;
  value: number;
  low: number;
  high: number;
  answer: string;
  low_answer: string;
  high_answer: string;
  low_per_month: number;
  high_per_month: number;
  changes: boolean;
}

export interface Sentence {
  text: string;
}

export interface Sheet {
  title: string;
  recommendation: Sentence[];
  reasons: Sentence[];
  not_possible: Sentence[];
  doubt: Sentence[];
  alternatives: Sentence[];
  assumptions: Sentence[];
  cautions: Sentence[];
}
