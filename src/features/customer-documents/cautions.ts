import type { Caution } from '../../platform/documents/index.js';

const LEAD = 'The usual cautions, not a complete list. Local code and licensed practice come first wherever they differ.';

const ELECTRICITY =
  'Electricity near water can kill. Pumps, lights and outlets need the ground-fault protection and bonding that the local electrical code asks for, put in or checked by a licensed electrician. Switch the power off before you reach into the water.';
const CHILDREN =
  'Open water and children: small children drown silently and in shallow water. Keep them in sight and within reach, and ask the local building office whether a fence, gate or cover is required.';
const EXCAVATION =
  'Excavation and lifting: stay away from open trenches, the drained pond and stone being lifted, outside working hours too. Edges can give way. Buried lines are located before anyone digs; tell us of any that you know.';
const DISPOSAL =
  'Waste water and sediment: pond water, treated water and sediment do not belong in a storm drain or a stream. Where they may go is for the local authority to say, and may need a permit.';
const PERMITS =
  'Permits and licensed trades: electrical, gas, plumbing and structural work is done by those licensed for it where local code says so, and permits and inspections come before the work they cover.';

/** For a customer whose pond is about to be opened up. */
export const BEFORE_THE_WORK: Caution = {
  heading: 'Safety on and around the site',
  lead: LEAD,
  items: [ELECTRICITY, CHILDREN, EXCAVATION, DISPOSAL, PERMITS],
};

/** For a customer who now lives with the water: one line each, so that a short invoice stays on one page. */
export const AFTER_THE_WORK: Caution = {
  heading: 'Safety around the water',
  lead: LEAD,
  items: [
    'Electricity near water can kill: switch it off before you reach in, and leave repairs to a licensed electrician.',
    'Small children drown silently, in shallow water too: keep them in reach. Local code may ask for a barrier.',
    'Pond water, treated water and sediment go into a storm drain or a stream only where the authority allows it.',
  ],
};
