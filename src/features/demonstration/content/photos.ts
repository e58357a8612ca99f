import type { Told } from './field-facts.js';

export interface DemoPhoto extends Told {
  readonly name: string;
  readonly caption: string;
  /** How full the pond is, 0 to 1. */
  readonly full: number;
  /** How far the water is from clear to brown, 0 to 1. */
  readonly murk: number;
  /** Whether the liner is torn. */
  readonly torn: boolean;
}

/** Pictures that are drawn (`draw-photo.ts`): nobody took them, and they show no real place. */
export const PHOTOS = [
  { name: 'fish-before', quote: 'fish', by: 'crew-lead', daysAgo: 4, at: '07:40', caption: 'Before: murky, a foot low', full: 0.85, murk: 0.9, torn: false },
  { name: 'fish-drained', quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '13:10', caption: 'Drained and cleaned', full: 0.25, murk: 0.5, torn: false },
  { name: 'fish-torn', quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '13:12', caption: 'Tear on the east side', full: 0.25, murk: 0.5, torn: true },
  { name: 'mill-after', quote: 'mill', by: 'crew', daysAgo: 9, at: '15:20', caption: 'After: filled and planted', full: 1, murk: 0.1, torn: false },
] as const satisfies readonly DemoPhoto[];

export type PhotoName = (typeof PHOTOS)[number]['name'];
