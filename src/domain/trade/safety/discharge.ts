import { asked, deferral, type Caution, type Checked } from './caution.js';

export type DischargeTo = 'own-ground' | 'storm-drain' | 'stream-or-lake' | 'sanitary-sewer' | 'hauled-away';
export const DISCHARGE_PLACES: readonly DischargeTo[] = ['own-ground', 'storm-drain', 'stream-or-lake', 'sanitary-sewer', 'hauled-away'];

export interface DischargeInput {
  readonly to: DischargeTo;
  readonly turbid: boolean;
  readonly chlorinated: boolean;
  readonly salted: boolean;
  /** With algaecide, herbicide or larvicide, within the time that its label names. */
  readonly treated: boolean;
  /** Plants, fish, snails or their eggs may go along. */
  readonly livingThings: boolean;
}

const PLACES: Readonly<Record<DischargeTo, readonly [text: string, source: string]>> = {
  'own-ground': ['On own ground keep the water off neighbors, basements, septic tanks and drain fields, and slow enough that it soaks in without washing soil away.', 'common practice; local health code'],
  'storm-drain': ['A storm drain leads to a stream untreated: many municipalities forbid any pond water in it, or want a permit. Ask first.', 'municipal code (from memory)'],
  'stream-or-lake': ['Water into a stream, lake or wetland may need a state permit, and work in it a federal one. Ask first.', 'Clean Water Act sections 402 and 404 (from memory)'],
  'sanitary-sewer': ['The sewer authority must agree to the water, its volume and its hours; never sludge.', 'municipal code (common practice)'],
  'hauled-away': ['Water and sludge go to a place that is allowed to take them; keep the ticket.', 'common practice'],
};

/**
 * Reminders before pond water is pumped off.
 * @see 75 FR 31775 (4 June 2010) for pesticide residues; the rest is from memory of the Clean Water Act and common practice
 */
export function dischargeCautions({ to, turbid, chlorinated, salted, treated, livingThings }: DischargeInput): Checked {
  const cautions: Caution[] = [];
  const add = (text: string, source: string): void => void cautions.push({ topic: 'Discharge', text, source });
  const open = to === 'storm-drain' || to === 'stream-or-lake';
  add(...PLACES[to]);
  if (turbid) add(`Turbid water: let it settle or filter it first${open ? '; never pump it to a storm drain or stream' : ''}.`, 'Clean Water Act (from memory)');
  if (chlorinated) add(`Chlorinated water kills fish: dechlorinate it by the label and test it${open ? '; never pump it to a storm drain or stream' : ''}.`, 'Clean Water Act (from memory)');
  if (salted) add(`Salted water harms plants and streams, and salt does not break down${open ? '; never pump it to a storm drain or stream' : ''}.`, 'Clean Water Act (from memory)');
  if (treated) add('Water with residues of algaecide, herbicide or larvicide: follow the label, and ask whether the discharge needs coverage by a permit. Applying it for hire needs a licence in many states.', '75 FR 31775 (4 June 2010); state law');
  if (livingThings) add('Screen the outlet: no plant, fish or snail may get away. Drain, clean and dry equipment before the next pond; bag and dispose of plants.', 'state invasive-species law (from memory)');
  cautions.push(deferral('the state and municipal water authority'));
  return {
    cautions,
    steps: [
      { label: 'goes to', expression: to, value: 'caution' },
      asked('turbid', turbid), asked('chlorinated', chlorinated), asked('salted', salted), asked('treated', treated), asked('living things', livingThings),
    ],
  };
}
