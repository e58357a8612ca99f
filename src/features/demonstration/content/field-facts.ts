import type { ChangeRequestAnswerBody, ChangeRequestBody, DepthBody, InstallationBody, LoadBody, MaterialUseBody, PunchItemBody, SignOffBody, WaterReadingBody } from '../../field-facts/index.js';
import type { Make } from './equipment.js';
import type { PhotoName } from './photos.js';

/** Who took it down, where and when. */
export interface Told {
  readonly quote: string;
  readonly by: string;
  /** Working days before the day the demonstration is made on. */
  readonly daysAgo: number;
  /** HH:MM */
  readonly at: string;
}

type Fact<Body, Moment extends keyof Body> = Told & { readonly body: Omit<Body, 'id' | 'jobId' | 'partId' | 'attachmentIds' | Moment> };

export const LOADS: readonly Fact<LoadBody, 'hauledAt'>[] = [
  { quote: 'mill', by: 'crew', daysAgo: 17, at: '14:10', body: { material: 'sediment', loads: 2, volume: { value: 11, unit: 'yd3' }, destination: 'Cindermoor Transfer Yard', ticket: '40251' } },
  { quote: 'fish', by: 'crew-lead', daysAgo: 3, at: '15:05', body: { material: 'sediment', loads: 1, volume: { value: 7, unit: 'yd3' }, weight: { value: 14_900, unit: 'lb' }, destination: 'Cindermoor Transfer Yard', ticket: '40288' } },
];

export const DEPTHS: readonly Fact<DepthBody, 'foundAt'>[] = [
  { quote: 'fish', by: 'crew', daysAgo: 3, at: '09:20', body: { place: 'At the bottom drain', toSediment: { value: 44, unit: 'in' }, toBottom: { value: 58, unit: 'in' }, note: 'Deeper than surveyed: gravel over the drain.' } },
  { quote: 'fish', by: 'crew', daysAgo: 3, at: '09:35', body: { place: '3 ft from the skimmer', toSediment: { value: 22, unit: 'in' }, toBottom: { value: 31, unit: 'in' } } },
];

export const MATERIAL_USES: readonly (Fact<MaterialUseBody, 'usedAt'> & { readonly sku?: string })[] = [
  { quote: 'fish', by: 'crew', daysAgo: 2, at: '11:40', sku: 'PIP-FLEX-2', body: { quantity: '62' } },
  { quote: 'fish', by: 'crew', daysAgo: 2, at: '14:30', sku: 'BKH-2', body: { quantity: '2' } },
  { quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '15:15', body: { description: 'Washed sand under the new pipe', quantity: '0.5', unit: 'yd3' } },
];

export const INSTALLATIONS: readonly (Fact<InstallationBody, 'installedAt' | 'make'> & { readonly body: { readonly make: Make } })[] = [
  { quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '15:40', body: { kind: 'pump', make: 'Okkaru', model: 'R 4500', serialNumber: 'OK-51877', note: 'Set in place and piped; not connected. The electrician does that.' } },
];

export const WATER_READINGS: readonly Fact<WaterReadingBody, 'takenAt'>[] = [
  { quote: 'fish', by: 'crew', daysAgo: 3, at: '08:00', body: { temperature: { value: 58, unit: 'degF' }, ph: 7.6, totalAmmoniaMgPerL: 0.25, oxygenMgPerL: 8.2, note: 'In the holding tank' } },
  { quote: 'fish', by: 'crew', daysAgo: 2, at: '08:05', body: { temperature: { value: 59, unit: 'degF' }, ph: 7.5, totalAmmoniaMgPerL: 0.5, oxygenMgPerL: 7.9, note: 'In the holding tank; a third of the water changed after it' } },
];

/** The first waits for the office. */
export const CHANGE_REQUESTS: readonly (Fact<ChangeRequestBody, 'foundAt'> & { readonly photos: readonly PhotoName[]; readonly answered?: Pick<Told, 'daysAgo' | 'at'> & ChangeRequestAnswerBody })[] = [
  { quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '13:20', photos: ['fish-drained', 'fish-torn'], body: { description: 'Liner torn for 4 ft below the water line on the east side, soil washed out behind it. Needs a patch, or new liner there.' } },
  { quote: 'mill', by: 'crew-lead', daysAgo: 16, at: '10:45', photos: [], body: { description: 'Outlet pipe crushed under the path, about 8 ft.' }, answered: { daysAgo: 16, at: '12:30', decision: 'declined', answer: 'The customer has the path dug up next year anyway, and wants it done then.' } },
];

export const PUNCH_ITEMS: readonly (Told & { readonly body: Omit<PunchItemBody, 'id' | 'jobId' | 'state'>; readonly done?: Pick<Told, 'by' | 'daysAgo' | 'at'> })[] = [
  { quote: 'mill', by: 'crew-lead', daysAgo: 10, at: '15:30', body: { description: 'Rinse the path and rake the gravel', place: 'West bank' }, done: { by: 'crew', daysAgo: 9, at: '10:10' } },
  { quote: 'mill', by: 'crew-lead', daysAgo: 10, at: '15:32', body: { description: 'Replace two irises that were bruised', place: 'Inlet' } },
  { quote: 'fish', by: 'crew-lead', daysAgo: 2, at: '15:50', body: { description: 'Level the capstone at the skimmer', place: 'South side' } },
];

export const SIGN_OFFS: readonly Fact<SignOffBody, 'signedAt'>[] = [
  { quote: 'mill', by: 'crew-lead', daysAgo: 8, at: '16:20', body: { signedBy: 'Jonas Tillotsen-Rae', statement: 'The work on the mill pond is substantially complete. Open: two irises at the inlet are replaced when the nursery has them.', drawing: 'M4 30 C 12 6, 20 6, 24 30 S 40 52, 48 24 S 66 10, 72 30 L 96 26' } },
];
