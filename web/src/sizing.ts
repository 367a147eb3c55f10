import type { components } from './api';

/** Which machine or mix the work needs: names for the types generated from the API's description. */
type Documents = components['schemas'];

export type Sizing = Documents['SizingDocument'];
export type Place = Documents['PlaceDocument'];
export type Aim = Documents['AimDocument'];
export type SizedMachine = Documents['MachineSizingDocument'];
export type MeasuredCurve = Documents['MeasuredCurveDocument'];
export type PriceCurve = Documents['PriceCurveDocument'];
export type Load = Documents['LoadDocument'];
export type CostBasis = Documents['CostBasisDocument'];
export type Assumption = Documents['AssumptionDocument'];
export type Measure = Documents['MeasureDocument'];
export type TurnRound = Documents['TurnRoundDocument'];
export type Cost = Documents['CostDocument'];
export type Level = Documents['LevelDocument'];
export type Larger = Documents['LargerDocument'];
export type MoneySide = Documents['MoneySideDocument'];
export type BreakEven = Documents['BreakEvenDocument'];
export type Mix = Documents['MixDocument'];
export type MixMachine = Documents['MixMachineDocument'];
export type FrontPoint = Documents['FrontPointDocument'];
export type OrderOn = Documents['OrderOnDocument'];
export type Limit = OrderOn['limit'];
export type SelfMaking = Documents['SelfMakingDocument'];
export type Sensitivity = Documents['SensitivityDocument'];
export type Sentence = Documents['SentenceDocument'];
export type Sheet = Documents['SheetDocument'];
