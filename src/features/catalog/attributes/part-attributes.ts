import {
  FilterAttributes, GravelAttributes, LinerAttributes, OtherAttributes, PipeAttributes, PumpAttributes, SkimmerAttributes, StoneAttributes,
  UnderlaymentAttributes,
} from './attributes.dto.js';
import { DoserAttributes, FishAttributes, FittingAttributes, PlantAttributes, SpillwayAttributes } from './pond-attributes.dto.js';
import type { PartKind } from './part-kinds.js';

/** Technical data of a part, by its kind. */
export type PartAttributes =
  | PumpAttributes
  | PipeAttributes
  | FittingAttributes
  | LinerAttributes
  | UnderlaymentAttributes
  | SkimmerAttributes
  | FilterAttributes
  | SpillwayAttributes
  | DoserAttributes
  | StoneAttributes
  | GravelAttributes
  | PlantAttributes
  | FishAttributes
  | OtherAttributes;

/** The class that checks the attributes of each kind. */
export const ATTRIBUTES_OF: Readonly<Record<PartKind, new () => PartAttributes>> = {
  pump: PumpAttributes,
  pipe: PipeAttributes,
  fitting: FittingAttributes,
  liner: LinerAttributes,
  underlayment: UnderlaymentAttributes,
  skimmer: SkimmerAttributes,
  filter: FilterAttributes,
  spillway: SpillwayAttributes,
  doser: DoserAttributes,
  stone: StoneAttributes,
  gravel: GravelAttributes,
  plant: PlantAttributes,
  fish: FishAttributes,
  other: OtherAttributes,
};
