import type { CustomerBody } from '../../customers/index.js';
import type { FeatureBody } from '../../features/index.js';
import type { SiteBody } from '../../sites/index.js';

export interface DemoFeature extends Omit<FeatureBody, 'siteId'> {
  /** What the other content calls the feature by. */
  readonly key: string;
}

export interface DemoSite extends Omit<SiteBody, 'customerId'> {
  readonly features: readonly DemoFeature[];
}

export interface DemoCustomer extends CustomerBody {
  /** When they first called, in working days before the day the demonstration is made on. */
  readonly calledDaysAgo: number;
  readonly sites: readonly DemoSite[];
}

/** All of them are invented. */
export const CUSTOMERS: readonly DemoCustomer[] = [
  {
    name: 'Agathe Murrow-Finch', calledDaysAgo: 252, email: 'agathe@murrowfinch.example', phone: '+1 555 0150', billingAddress: '31 Lantern Lane\nSedge Crossing, MI 48000',
    concerns: 'I inherited the pond with the house and nobody has touched it in ten years. I would like to see the lilies again, but not all at once: what can wait?',
    sites: [{
      address: '31 Lantern Lane\nSedge Crossing, MI 48000', accessNotes: 'Gate beside the garage, 42 in wide. Rinse water may go on the lower lawn.', hazards: 'Old cable of unknown depth runs to the pond; treat it as live until a licensed electrician has looked.',
      features: [{ key: 'murrow-lily', kind: 'pond', name: 'Lily pond', builtYear: 1998 }],
    }],
  },
  {
    name: 'Larkenby House', calledDaysAgo: 90, email: 'desk@larkenbyhouse.example', phone: '+1 555 0151', billingAddress: 'Accounts, Larkenby House\n2 Larkenby Drive\nMoss Ferry, MI 48001',
    concerns: 'Guests on the terrace complain about the smell. It must be done before the wedding season, and the terrace may not be closed on weekends.',
    sites: [{
      address: '2 Larkenby Drive\nMoss Ferry, MI 48001', accessNotes: 'Deliveries through the kitchen yard before 10:00 only. 70 yd by barrow from there.', hazards: 'Steep bank on the north side. Guests walk through the work area: fence it.',
      features: [{ key: 'larkenby-terrace', kind: 'pond', name: 'Terrace pond', builtYear: 1987 }],
    }],
  },
  {
    name: 'Wilhelmina Strake', calledDaysAgo: 86, email: 'w.strake@strake.example', phone: '+1 555 0152', billingAddress: '9 Cooper Bend\nSedge Crossing, MI 48000',
    concerns: 'Green every summer whatever I pour in, and the pump hums but moves nothing. My grandchildren want to see the fish.',
    sites: [{
      address: '9 Cooper Bend\nSedge Crossing, MI 48000', accessNotes: 'Drive right up to the pond along the orchard.', hazards: 'Well head 20 ft west of the pond: no fuel and no rinse water near it.',
      features: [{ key: 'strake-back', kind: 'pond', name: 'Back pond', builtYear: 2006 }],
    }],
  },
  {
    name: 'Birchwick Commons Association', calledDaysAgo: 60, email: 'board@birchwickcommons.example', phone: '+1 555 0153', billingAddress: 'Birchwick Commons Association\n100 Commons Green\nAlder Reach, MI 48002',
    concerns: 'The entrance basin is the first thing that buyers see. The lower pond silts up from the road drain; the board wants a number before the annual meeting.',
    sites: [{
      address: '100 Commons Green\nAlder Reach, MI 48002', accessNotes: 'Park on the green only with the boards down. Key to the pump vault at the caretaker\'s.', hazards: 'Pump vault is a confined space: do not climb in. Traffic at the entrance.',
      features: [
        { key: 'commons-basin', kind: 'basin', name: 'Entrance basin', builtYear: 2011 },
        { key: 'commons-lower', kind: 'pond', name: 'Lower pond', builtYear: 2011 },
        { key: 'commons-stream', kind: 'stream', name: 'Meadow stream', builtYear: 2012 },
      ],
    }],
  },
  {
    name: 'Osric and Leonie Vantreese', calledDaysAgo: 40, email: 'leonie@vantreese.example', phone: '+1 555 0154', billingAddress: '58 Quarry Steps\nSedge Crossing, MI 48000',
    concerns: 'The waterfall loses two inches a day and the splash has rotted the bench. We like the sound and would keep that.',
    sites: [{
      address: '58 Quarry Steps\nSedge Crossing, MI 48000', accessNotes: 'Everything goes down 24 stone steps; plan for a lift or small stones.', hazards: 'Loose capstone on the retaining wall. Keep clear below while stones are moved.',
      features: [{ key: 'vantreese-fall', kind: 'waterfall', name: 'Courtyard waterfall', builtYear: 2014 }],
    }],
  },
  {
    name: 'Jonas Tillotsen-Rae', calledDaysAgo: 34, email: 'jonas@tillotsenrae.example', phone: '+1 555 0155', billingAddress: '400 Millrace Road\nMoss Ferry, MI 48001',
    concerns: 'Two ponds from the old mill. The mill pond first, please; tell me what the upper one would take.',
    sites: [{
      address: '400 Millrace Road\nMoss Ferry, MI 48001', accessNotes: 'Farm track, firm when dry. Spoil may be spread behind the barn.', hazards: 'Open race with fast water beside the track. Barn dog.',
      features: [
        { key: 'tillotsen-mill', kind: 'pond', name: 'Mill pond', builtYear: 1979 },
        { key: 'tillotsen-upper', kind: 'pond', name: 'Upper pond', builtYear: null },
      ],
    }],
  },
  {
    name: 'Hester Quillfeather', calledDaysAgo: 28, email: 'hester@quillfeather.example', phone: '+1 555 0156', billingAddress: '12B Weaver Close\nAlder Reach, MI 48002',
    concerns: 'Herons took the fish. I want it deeper, with plants to hide in, and lights for the evening if the money reaches.',
    sites: [{
      address: '12B Weaver Close\nAlder Reach, MI 48002', accessNotes: 'Through the house only: cover the floor.', hazards: 'Gas line along the east fence; call before digging.',
      features: [{ key: 'quillfeather-garden', kind: 'pond', name: 'Garden pond', builtYear: 2016 }],
    }],
  },
  {
    name: 'Fennelcote School', calledDaysAgo: 17, email: 'office@fennelcoteschool.example', phone: '+1 555 0157', billingAddress: 'Fennelcote School, Facilities\n5 Schoolhouse Way\nSedge Crossing, MI 48000',
    concerns: 'The nature pond is a lawn by now. The science teachers want newts and a safe edge for a class of thirty.',
    sites: [{
      address: '5 Schoolhouse Way\nSedge Crossing, MI 48000', accessNotes: 'Out of school hours, or with the gate locked behind you.', hazards: 'Children. Open water must be fenced whenever nobody is at it.',
      features: [{ key: 'fennelcote-nature', kind: 'pond', name: 'Nature pond', builtYear: 2003 }],
    }],
  },
  {
    name: 'Emeka Brandolph', calledDaysAgo: 22, email: 'emeka@brandolph.example', phone: '+1 555 0158', billingAddress: '77 Plover Street\nMoss Ferry, MI 48001',
    concerns: 'Eleven large fish that I will not lose. They gasp at dawn, and the bottom drain has been blocked since spring.',
    sites: [{
      address: '77 Plover Street\nMoss Ferry, MI 48001', accessNotes: 'Side yard, 48 in gate. Power and tap at the shed.', hazards: 'Outlet at the shed has no ground-fault protection; use our own until a licensed electrician has changed it.',
      features: [{ key: 'brandolph-fish', kind: 'pond', name: 'Fish pond', builtYear: 2009 }],
    }],
  },
  {
    name: 'Rosamund Aberquill', calledDaysAgo: 9, email: 'rosamund@aberquill.example', phone: '+1 555 0159', billingAddress: '21 Cobbler Rise\nAlder Reach, MI 48002',
    concerns: 'It leaks, it smells and the waterfall is dry. We can not pay for everything this year: moving water first, the waterfall and the planting when we can.',
    sites: [{
      address: '21 Cobbler Rise\nAlder Reach, MI 48002', accessNotes: 'Side gate, 38 in wide. 20 yd to the street, level.', hazards: 'Irrigation lines cross the side yard: mark them before digging.',
      features: [{ key: 'aberquill-court', kind: 'pond', name: 'Court pond', builtYear: 2004 }],
    }],
  },
];
