import { asked, deferral, type Caution, type Checked } from './caution.js';

export interface WaterSupplyInput {
  /** By hose or by pipe, from the mains or from a well that people drink from. */
  readonly drinkingWater: boolean;
  /** A valve that tops the pond up by itself. */
  readonly autoFill: boolean;
  /** Work on pipe that also feeds taps. */
  readonly sharedPipe: boolean;
}

const LEAD = 'Safe Drinking Water Act section 1417 (EPA)';

/**
 * Reminders before a pond is filled or topped up from water that people drink.
 * @see Safe Drinking Water Act section 1417 for lead: at most 0.25 % over wetted surfaces, 0.2 % in solder and flux, devices
 *   for other water alone exempt; Michigan cross connection rules, R 325.11403, for another source on the same pipe
 */
export function waterSupplyCautions({ drinkingWater, autoFill, sharedPipe }: WaterSupplyInput): Checked {
  const cautions: Caution[] = [];
  const add = (text: string, source: string): void => void cautions.push({ topic: 'Water supply', text, source });
  add('Water that stood in a pond, hose or pump is not for drinking, cooking or washing, whatever it came from.', 'common practice');
  if (drinkingWater) {
    add('When the pressure in the street drops, a hose that hangs in the pond or an unguarded pipe sucks pond water into the taps. Keep an air gap above the water, or the backflow preventer that the water supplier names, tested as it says.', 'plumbing code (common practice)');
    add('A pond, well or pump must not be joined to the public supply by a pipe with nothing but a closed valve between.', 'cross connection rules, such as Michigan R 325.11403');
    add('Water from the mains holds chlorine or chloramine: dechlorinate it before fish meet it.', 'common practice');
  }
  if (sharedPipe) add('Pipe, fittings and fixtures that also carry water to drink must be lead-free: at most 0.25 % lead over the wetted surfaces, 0.2 % in solder and flux. Those sold for irrigation or other water alone are exempt, and must not go there.', LEAD);
  if (autoFill) add('A valve that tops the pond up hides a leak and can empty a well: meter it or close it now and then, and see how far the water falls.', 'common practice');
  cautions.push(deferral('the water supplier and a licensed plumber'));
  return { cautions, steps: [asked('from drinking water', drinkingWater), asked('pipe shared with taps', sharedPipe), asked('tops itself up', autoFill)] };
}
