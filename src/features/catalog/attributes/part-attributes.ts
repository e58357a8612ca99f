import {
  DoserAttributes, FilterAttributes, GravelAttributes, LinerAttributes, OtherAttributes, PipeAttributes, PumpAttributes, SkimmerAttributes, StoneAttributes,
  UnderlaymentAttributes,
} from './attributes.dto.js';
import type { PartKind } from './part-kinds.js';

/** Technical data of a part, by its kind. */
export type PartAttributes =
  | PumpAttributes
  | PipeAttributes
  | LinerAttributes
  | UnderlaymentAttributes
  | SkimmerAttributes
  | FilterAttributes
  | DoserAttributes
  | StoneAttributes
  | GravelAttributes
  | OtherAttributes;

/** The class that checks the attributes of each kind. */
export const ATTRIBUTES_OF: Readonly<Record<PartKind, new () => PartAttributes>> = {
  pump: PumpAttributes,
  pipe: PipeAttributes,
  liner: LinerAttributes,
  underlayment: UnderlaymentAttributes,
  skimmer: SkimmerAttributes,
  filter: FilterAttributes,
  doser: DoserAttributes,
  stone: StoneAttributes,
  gravel: GravelAttributes,
  other: OtherAttributes,
};
