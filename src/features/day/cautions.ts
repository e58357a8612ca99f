import type { DayCautionView } from './day.view.js';

/** For a crew at the edge of a pond: common practice in few words, once a sheet, so that they are read. */
export const CREW_CAUTIONS: readonly DayCautionView[] = [
  { topic: 'Electricity', text: 'Disconnect, lock and tag pumps, lights and heaters before anyone reaches into the water. Wiring is for a licensed electrician.' },
  { topic: 'Digging', text: 'Call before you dig, wait as long as local law says, and keep to the marks. Nobody enters a trench before a competent person has looked at it.' },
  { topic: 'Lifting', text: 'Stone is heavier than it looks: use equipment, and stay out from under it.' },
  { topic: 'Water and mud', text: 'Pump and haul only to where the authority allows it. Never leave an open or drained pond unguarded.' },
  { topic: 'Chemicals', text: 'Follow the label and wear what it says.' },
];
