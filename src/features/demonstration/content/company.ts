import type { CompanyBody } from '../../companies/index.js';
import type { PersonBody } from '../../people/index.js';

/** The zone that the demonstration's days are counted in. */
export const DEMO_ZONE = 'America/Detroit';

export const COMPANY: CompanyBody = {
  name: 'Wrenmarsh Pond Renovation',
  address: '7 Tannery Row\nSedge Crossing, MI 48000',
  phone: '+1 555 0140',
  email: 'office@wrenmarsh.example',
  licenceNumber: 'DEMO-204817',
  currency: 'USD',
  timeZone: DEMO_ZONE,
  locale: 'en-US',
  unitSystem: 'us',
  paperSize: 'letter',
  laborSellRate: '68.00',
  hourIncrement: '0.25',
  taxCategories: [
    { code: 'materials', name: 'Sales tax on materials', rate: '6.25' },
    { code: 'plants', name: 'Sales tax on plants', rate: '4' },
  ],
  laborTaxCategory: null,
  paymentTermsDays: 30,
  paymentInstructions: 'By check to Wrenmarsh Pond Renovation, 7 Tannery Row, or by bank transfer; the office gives the account number by telephone only.',
};

export interface DemoPerson extends PersonBody {
  /** What the other content calls the person by; also the part of the address before the @. */
  readonly key: string;
}

const person = (key: string, name: string, role: PersonBody['role'], hourlyWage: string, phone: string): DemoPerson => ({
  key, name, role, hourlyWage, phone, email: `${key}@wrenmarsh.example`, burdenPercent: '22.5',
});

export const PEOPLE: readonly DemoPerson[] = [
  person('owner', 'Tamsin Ostravale', 'owner', '48.00', '+1 555 0141'),
  person('estimator', 'Idris Callowhill', 'estimator', '39.50', '+1 555 0142'),
  person('crew-lead', 'Petra Lindqvar', 'crew-lead', '33.00', '+1 555 0143'),
  person('crew', 'Dov Arkwell', 'crew', '26.00', '+1 555 0144'),
  person('crew2', 'Sunniva Tarrick', 'crew', '27.50', '+1 555 0145'),
  person('crew3', 'Bashir Okonvale', 'crew', '25.00', '+1 555 0146'),
  person('crew4', 'Ludo Fennimark', 'crew', '24.00', '+1 555 0147'),
];

/** Who works together; the two crews are on different jobs at the same time. */
export const CREWS = {
  heron: ['crew-lead', 'crew'],
  newt: ['crew2', 'crew3', 'crew4'],
} as const satisfies Record<string, readonly string[]>;

export type CrewName = keyof typeof CREWS;
