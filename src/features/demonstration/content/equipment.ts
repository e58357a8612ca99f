import type { EquipmentBody } from '../../equipment/index.js';

/** All makes of the demonstration; the words are invented. */
export const MAKES = ['Drelvane', 'Okkaru', 'Quenlo', 'Bruskell', 'Vosskindle'] as const;
export type Make = (typeof MAKES)[number];

export interface DemoEquipment extends Pick<EquipmentBody, 'kind' | 'model' | 'condition' | 'settings'> {
  readonly feature: string;
  readonly make: Make;
  /** Whole years since it was installed. */
  readonly ageYears: number;
  readonly warrantyYears: number;
}

const item = (feature: string, kind: string, make: Make, model: string, [ageYears, warrantyYears]: readonly [number, number], condition: string, settings: EquipmentBody['settings'] = {}): DemoEquipment => ({ feature, kind, make, model, ageYears, warrantyYears, condition, settings });

export const EQUIPMENT: readonly DemoEquipment[] = [
  item('strake-back', 'skimmer', 'Drelvane', 'S 16 with filter pad', [9, 5], 'Weir door sticks; pad worn through'),
  item('strake-back', 'pump', 'Okkaru', 'R 3000', [0, 3], 'New', { 'flow gph': 3000, 'head ft': 8 }),
  item('strake-back', 'biological filter', 'Drelvane', 'B 40', [9, 5], 'Sound; media rinsed'),
  item('strake-back', 'light', 'Vosskindle', 'L 3 warm', [4, 2], 'Two of three work', { fixtures: 3, 'on at': 'dusk', 'off at': '23:00' }),
  item('commons-basin', 'pump', 'Okkaru', 'R 6000', [6, 3], 'Runs hot', { 'flow gph': 6000, 'head ft': 11 }),
  item('commons-basin', 'doser', 'Quenlo', 'D 1', [3, 2], 'Tube split, replaced', { 'dose ml per day': 24, 'runs in winter': false }),
  item('commons-basin', 'light', 'Vosskindle', 'L 6 white', [6, 2], 'Works', { fixtures: 6 }),
  item('commons-lower', 'aerator', 'Bruskell', 'A 60', [5, 2], 'Diffusers half clogged', { 'air L per min': 60, diffusers: 2 }),
  item('commons-stream', 'pump', 'Okkaru', 'R 6000', [12, 3], 'Dead since last fall'),
  item('vantreese-fall', 'waterfall', 'Drelvane', 'W 24 spillway', [10, 10], 'Lip level again after the rebuild', { 'lip in': 24 }),
  item('vantreese-fall', 'pump', 'Okkaru', 'R 4500', [3, 3], 'Good', { 'flow gph': 4500, 'head ft': 9 }),
  item('larkenby-terrace', 'skimmer', 'Drelvane', 'S 24 with filter pad', [0, 5], 'New'),
  item('larkenby-terrace', 'aerator', 'Bruskell', 'A 40', [0, 2], 'New', { 'air L per min': 40 }),
  item('tillotsen-mill', 'biological filter', 'Drelvane', 'B 80', [0, 5], 'New'),
  item('quillfeather-garden', 'pump', 'Okkaru', 'R 1500', [7, 3], 'Weak; impeller worn', { 'flow gph': 1500 }),
  item('quillfeather-garden', 'light', 'Vosskindle', 'L 3 warm', [7, 2], 'None works'),
  item('brandolph-fish', 'skimmer', 'Drelvane', 'S 16 with filter pad', [11, 5], 'Net torn'),
  item('brandolph-fish', 'pump', 'Okkaru', 'R 4500', [5, 3], 'Good', { 'flow gph': 4500, 'head ft': 7 }),
  item('brandolph-fish', 'biological filter', 'Drelvane', 'B 80', [11, 5], 'Channelled; media to be replaced'),
  item('brandolph-fish', 'aerator', 'Bruskell', 'A 40', [2, 2], 'Good; runs all night', { 'air L per min': 40, 'runs in winter': true }),
  item('brandolph-fish', 'doser', 'Quenlo', 'D 1', [2, 2], 'Empty', { 'dose ml per day': 18 }),
];
