import type { Scope } from './scopes.js';

const SEDIMENT = 'Sediment and waste water go where the place allows it: never turbid or treated water into a storm drain or a stream. Call before you dig.';

/** Where the work of a scope can hurt people or water: cautions, never permissions. Local code and licensed practice decide. */
export const CAUTIONS: Readonly<Partial<Record<Scope, string>>> = {
  'clean-out': SEDIMENT,
  'haul-away': SEDIMENT,
  edge: 'Anything that retains more than about 3 ft of earth, carries a load or stands near a building wants a licensed design: local code decides.',
  circulation: 'Electricity near water: ground-fault protection, bonding and receptacles are the work of a licensed electrician, by local code.',
};
