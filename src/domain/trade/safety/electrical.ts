import { requireWithin } from '../input-checks.js';
import { asked, compared, deferral, type Caution, type Checked } from './caution.js';

const CORD_M = 3.048;
const RECEPTACLE_NEAR_M = 1.8288;
const RECEPTACLE_SOME_M = 3.048;
const RECEPTACLE_GFCI_M = 6.096;
const CODE = 'NEC Article 680 Part V or 682; edition-dependent';
/** Read: 680.22 as quoted among inspectors, and the California order itself. Written for pools; an electrician says what a pond is. */
const POOLS = 'NEC 680.22 for pools, edition-dependent; California Code of Regulations, title 8, section 2569.5';

export interface ElectricalInput {
  /** From the water's edge to the receptacle; m; null when unknown. */
  readonly receptacleDistanceM: number | null;
  /** m; null when nothing has a cord. */
  readonly cordLengthM: number | null;
  readonly submersiblePump: boolean;
  /** Ladders, rails, pump housings, reinforcement and the like, near the water. */
  readonly metalNearWater: boolean;
}

/**
 * Reminders for electricity near water, for the electrician to be asked about.
 * @throws DomainError at /receptacleDistance or /cordLength
 * @see NEC Article 680 Part V (fountains) and 682 (natural and artificial bodies of water), in general terms; the distances of
 *   6 ft and 20 ft are those of NEC 680.22, the 10 ft those of California's title 8, section 2569.5, both for pools
 */
export function electricalCautions({ receptacleDistanceM, cordLengthM, submersiblePump, metalNearWater }: ElectricalInput): Checked {
  if (receptacleDistanceM !== null) requireWithin('/receptacleDistance', receptacleDistanceM, 0, 1000, 'm');
  if (cordLengthM !== null) requireWithin('/cordLength', cordLengthM, 0, 1000, 'm');
  const cautions: Caution[] = [];
  const add = (text: string, source = CODE): void => void cautions.push({ topic: 'Electricity', text, source });
  const near = receptacleDistanceM === null || receptacleDistanceM < RECEPTACLE_NEAR_M;
  const near10 = receptacleDistanceM !== null && !near && receptacleDistanceM < RECEPTACLE_SOME_M - 1e-6;
  const within20 = receptacleDistanceM === null || receptacleDistanceM <= RECEPTACLE_GFCI_M;
  const longCord = cordLengthM !== null && cordLengthM > CORD_M;
  add('Before anyone reaches into the water: disconnect, lock and tag the circuits of pump, lights and heater. Water may be live without any sign.', 'common practice');
  add('Ask for ground-fault protection of every circuit of the feature, and test it.');
  if (near) add('A receptacle nearer than 6 ft (1.8 m) to the water, or at an unknown distance, is commonly forbidden for pools and fountains; ask where it may stand and how high.', POOLS);
  if (near10) add('Some states keep receptacles at least 10 ft (3 m) from the water of pools and fountains; ask.', POOLS);
  if (within20) add('A receptacle within 20 ft (6 m) of the water commonly needs ground-fault protection and a cover for wet places.', POOLS);
  if (longCord) add('Cords of submersible equipment are commonly limited to 10 ft (3 m). No extension cords.');
  if (submersiblePump) add('Submersible equipment commonly needs a low-water cutoff, or to be made for running dry, and a strain relief on its cord.');
  if (metalNearWater) add('Metal near the water commonly needs equipotential bonding; ask the electrician what belongs to it before it is buried.');
  cautions.push(deferral('a licensed electrician, who also says which article applies,'));
  return {
    cautions,
    steps: [
      ...(receptacleDistanceM === null ? [asked('distance of the receptacle unknown', true)] : [compared('receptacle near', receptacleDistanceM, '<', RECEPTACLE_NEAR_M, 'm', near), compared('receptacle within the distance of some states', receptacleDistanceM, '<', RECEPTACLE_SOME_M, 'm', near10), compared('receptacle within ground-fault distance', receptacleDistanceM, '<=', RECEPTACLE_GFCI_M, 'm', within20)]),
      ...(cordLengthM === null ? [] : [compared('cord', cordLengthM, '>', CORD_M, 'm', longCord)]),
      asked('submersible pump', submersiblePump),
      asked('metal near the water', metalNearWater),
    ],
  };
}
