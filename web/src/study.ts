import type { components } from './api';

/** What study.json says, as the page reads it: names for the types generated from the API's description. */
type Documents = components['schemas'];

/** In the report what is null is left out. */
export type Maybe<T> = T | null | undefined;

export type Study = Documents['StudyDocument'];
export type Share = Documents['ShareDocument'];
export type Heat = Documents['HeatDocument'];
export type Machine = Documents['MachineDocument'];
export type Builds = Documents['BuildsDocument'];
export type Cycle = Documents['CycleDocument'];
export type Project = Documents['ProjectDocument'];
export type ProjectVerdict = Documents['ProjectVerdictDocument'];
export type Need = Documents['NeedDocument'];
export type Part = Documents['PartDocument'];
export type ViewModel = Documents['ModelDocument'];
export type PartFit = Documents['PartFitDocument'];
export type Estimate = Documents['PartEstimateDocument'];
export type StageSeconds = Documents['TimeDocument'];
export type Way = Documents['WayDocument'];
export type Pose = Documents['PoseDocument'];
export type Curve = Documents['CurveDocument'];
export type CurveStep = Documents['CurveStepDocument'];
export type BuildVolume = Documents['BuildVolumeDocument'];
export type ModelError = Documents['ErrorDocument'];
export type Verdict = PartFit['verdict'];
export type CountsAs = PartFit['counts_as'];
