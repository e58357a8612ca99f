import { plain } from '../../decimal.js';
import { within } from '../../errors.js';
import type { Working, WorkingStep } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { given, step } from '../working-lines.js';
import { deferral, type Caution } from './caution.js';
import { couplingMultiplier, frequencyMultiplier, type Coupling, type LiftDuration } from './lift-tables.js';

const LOAD_CONSTANT_LB = 51;
const KG_PER_LB = 0.45359237;
const M_PER_IN = 0.0254;
const SOURCE = 'NIOSH 94-110 (rev. 9/2021), revised lifting equation';

/** Where the hands are at one end of the lift. */
export interface HandPosition {
  /** From between the ankles to the hands; m. Nearer than 10 in counts as 10 in; beyond 25 in there is no recommended weight. */
  readonly reachM: number;
  /** Above the floor; m. Beyond 70 in there is no recommended weight. */
  readonly heightM: number;
  /** How far the body is turned; degrees, 0 to 180. Beyond 135 there is no recommended weight. */
  readonly turnDegrees: number;
}

export interface LiftInput {
  /** kg, above 0 */
  readonly loadKg: number;
  readonly start: HandPosition;
  readonly end: HandPosition;
  readonly liftsPerMinute: number;
  readonly duration: LiftDuration;
  readonly coupling: Coupling;
}

export interface LiftCheck {
  /** kg */
  readonly startLimitKg: number;
  /** kg */
  readonly endLimitKg: number;
  /** Load / smaller limit; null when the limit is 0, so that no finite index describes the lift. */
  readonly liftingIndex: number | null;
  readonly cautions: Caution[];
  readonly working: Working;
}

/**
 * RWL = LC · HM · VM · DM · AM · FM · CM at both ends of the lift, LC 51 lb; HM 10/H, VM 1 − 0.0075 |V − 30|,
 * DM 0.82 + 1.8/D, AM 1 − 0.0032 A, lengths in inches. The smaller of both counts. For one person, two hands, a dry level
 * floor and a steady lift of at most 8 h.
 * @throws DomainError at /load, /liftsPerMinute, or at /reach, /height or /turnDegrees of /start or /end
 * @see NIOSH 94-110 (rev. 9/2021)
 */
export function liftCheck(input: LiftInput): LiftCheck {
  requirePositive('/load', input.loadKg);
  requireWithin('/liftsPerMinute', input.liftsPerMinute, 0, 60, 'a minute');
  for (const end of ['start', 'end'] as const) {
    const { reachM, heightM, turnDegrees } = input[end];
    within(`/${end}`, () => {
      requireWithin('/reach', reachM, 0, 10, 'm');
      requireWithin('/height', heightM, 0, 10, 'm');
      requireWithin('/turnDegrees', turnDegrees, 0, 180, 'degrees');
    });
  }
  const travelIn = Math.abs(input.end.heightM - input.start.heightM) / M_PER_IN;
  const start = limitAt('start', input.start, travelIn, input);
  const end = limitAt('end', input.end, travelIn, input);
  const limitKg = Math.min(start.limitKg, end.limitKg);
  const liftingIndex = limitKg > 0 ? input.loadKg / limitKg : null;
  const working: Working = {
    rule: 'recommended weight = 51 lb × HM × VM × DM × AM × FM × CM, the smaller of start and end; index = load / it',
    inputs: [given('load', input.loadKg, 'kg'), given('travel', travelIn, 'in'), given('lifts a minute', input.liftsPerMinute), { name: 'duration', value: input.duration }, { name: 'coupling', value: input.coupling }],
    steps: [...start.steps, ...end.steps, ...(liftingIndex === null ? [] : [step('lifting index', `${plain(input.loadKg)} / ${plain(limitKg)}`, liftingIndex)])],
  };
  return { startLimitKg: start.limitKg, endLimitKg: end.limitKg, liftingIndex, cautions: cautionsOf(liftingIndex), working };
}

function limitAt(name: string, { reachM, heightM, turnDegrees }: HandPosition, travelIn: number, input: LiftInput): { limitKg: number; steps: WorkingStep[] } {
  const reachIn = reachM / M_PER_IN;
  const heightIn = heightM / M_PER_IN;
  const factors = [
    ['HM', reachIn > 25 ? 0 : 10 / Math.max(10, reachIn)],
    ['VM', heightIn > 70 ? 0 : 1 - 0.0075 * Math.abs(heightIn - 30)],
    ['DM', travelIn <= 10 ? 1 : 0.82 + 1.8 / travelIn],
    ['AM', turnDegrees > 135 ? 0 : 1 - 0.0032 * turnDegrees],
    ['FM', frequencyMultiplier(input.liftsPerMinute, input.duration, heightIn)],
    ['CM', couplingMultiplier(input.coupling, heightIn)],
  ] as const;
  const limitLb = factors.reduce((product, [, factor]) => product * factor, LOAD_CONSTANT_LB);
  const steps = factors.map(([factor, value]) => step(`${factor} at the ${name}`, `reach ${plain(reachIn)} in, height ${plain(heightIn)} in, turn ${plain(turnDegrees)} degrees`, value));
  steps.push(step(`recommended weight at the ${name}`, `51 × ${factors.map(([, factor]) => plain(factor)).join(' × ')}`, limitLb, 'lb'));
  return { limitKg: limitLb * KG_PER_LB, steps };
}

function cautionsOf(index: number | null): Caution[] {
  const cautions: Caution[] = [];
  const add = (text: string): void => void cautions.push({ topic: 'Lifting', text, source: SOURCE });
  if (index === null) add('A multiplier is 0: the equation recommends no weight at all for this reach, height, turn or pace. Use equipment or another way.');
  else if (index > 3) add('More than three times the recommended weight: many workers would be at a high risk of a back injury. Use equipment.');
  else if (index > 1) add('More than the recommended weight: the risk of a back injury rises for some workers. Bring the stone nearer, split the lift, or use equipment.');
  add('The equation does not cover wet, muddy or sloping ground, one hand, kneeling, several people, shoveling, carrying or barrows: there the risk is higher than it says, and an index below 1 does not make the lift harmless.');
  cautions.push(deferral('the employer\'s safety program'));
  return cautions;
}
