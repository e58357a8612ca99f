import { requireWithin } from '../input-checks.js';
import { asked, compared, deferral, reaches, type Caution, type Checked } from './caution.js';

const OFTEN_M = 0.6096;
const SOMETIMES_M = 0.4572;

/**
 * Cautions about children and open water, by the greatest depth of water, 0 to 100 m.
 * @throws DomainError at /waterDepth
 * @see CPSC release on drowning of children under five outside pools; ISPSC section 305; local ordinances (24 in); Arizona Revised Statutes 36-1681 (18 in deep and 8 ft wide, where a child under six lives), as reported
 */
export function barrierCautions(waterDepthM: number, childrenMayReachIt: boolean): Checked {
  requireWithin('/waterDepth', waterDepthM, 0, 100, 'm');
  const cautions: Caution[] = [];
  const add = (text: string, source: string): void => void cautions.push({ topic: 'Open water', text, source });
  const often = reaches(waterDepthM, OFTEN_M);
  const sometimes = reaches(waterDepthM, SOMETIMES_M);
  add('Small children drown in water of any depth, in ornamental ponds and fountains too: about 150 under five each year at home outside pools in the US. Watch them; no depth is harmless.', 'CPSC release');
  if (often) add('At 24 in (0.61 m) or more many places require a barrier, commonly at least 48 in (1.22 m) high with a gate that closes and latches by itself.', 'ISPSC section 305; local ordinances');
  else if (sometimes) add('From 18 in (0.46 m) on some places require a barrier; ask before building.', 'Arizona Revised Statutes 36-1681, as reported; local ordinances');
  else add('Some places require a barrier at any depth, or for a pond within a fenced yard; ask before building.', 'local ordinances (common practice)');
  if (childrenMayReachIt) add('Children can reach the water: speak with the customer about a barrier, a grid below the surface or a shallower edge, whatever the code asks.', 'common practice');
  cautions.push(deferral('the building official'));
  return {
    cautions,
    steps: [compared('barrier depth of many places', waterDepthM, '>=', OFTEN_M, 'm', often), compared('barrier depth of some places', waterDepthM, '>=', SOMETIMES_M, 'm', sometimes), asked('children may reach it', childrenMayReachIt)],
  };
}
