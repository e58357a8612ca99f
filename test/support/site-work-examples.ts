const ft = (value: number): object => ({ value, unit: 'ft' });
const inches = (value: number): object => ({ value, unit: 'in' });
const gal = (value: number): object => ({ value, unit: 'gal' });
const usd = (amount: string): object => ({ amount, currency: 'USD' });

/** Good inputs for liner, stone, water in and out, and safety. */
export const SITE_WORK_EXAMPLES: Readonly<Record<string, object>> = {
  'section-volume': { sections: [[0, 176], [1.25, 143.8125], [2.5, 114.75]].map(([at = 0, area]) => ({ at: ft(at), area: { value: area, unit: 'ft2' } })) },
  'liner-sheet': {
    outline: { shape: 'rectangle', length: ft(16), width: ft(11) },
    profile: [{ drop: inches(10), run: inches(0) }, { drop: inches(0), run: inches(12) }, { drop: inches(20), run: inches(10) }],
    overlap: ft(1),
    underlaymentLayers: 1,
    membrane: { material: 'epdm', thicknessMil: 45 },
  },
  'liner-cut': {
    length: ft(23),
    width: ft(18),
    rolls: [{ name: 'Liner 45 mil, 10 ft', width: ft(10), length: ft(100), price: usd('0.87'), pricePer: 'ft2' }, { name: 'Liner 45 mil, 20 ft', width: ft(20), length: ft(100), price: usd('1.02') }],
    seamOverlap: inches(3),
    seamPrice: { price: usd('2.15'), per: 'ft' },
  },
  'stone-edge': { length: ft(40), height: ft(1), thickness: ft(1), voidFraction: 0.3, reclaimed: { value: 1, unit: 'ton' } },
  'gravel-bed': { area: { value: 100, unit: 'ft2' }, depth: inches(3), largestStone: inches(1.5), reclaimed: { value: 600, unit: 'lb' } },
  'reclaimed-stone': { piles: [{ length: inches(24), width: inches(18), height: inches(12), form: 'rounded', count: 9 }], needed: { value: 2.5, unit: 'ton' } },
  'net-water': { waterVolume: gal(5264), stone: [{ mass: { value: 2, unit: 'ton' }, submergedPercent: 50 }], gravel: [{ volume: { value: 10, unit: 'ft3' } }] },
  evaporation: { area: { value: 200, unit: 'ft2' }, waterTemperature: { value: 75, unit: 'degF' }, airTemperature: { value: 80, unit: 'degF' }, relativeHumidityPercent: 50, windMph: 3 },
  'pan-evaporation': { area: { value: 200, unit: 'ft2' }, panEvaporation: inches(48) },
  'start-up-water': { pond: gal(5264), displaced: gal(300), system: gal(150), kept: gal(600), rinsing: gal(200), supplyFlow: { value: 9, unit: 'gpm' } },
  'make-up-water': { area: { value: 200, unit: 'ft2' }, evaporationPerDay: inches(0.15), rainPerDay: inches(0.1), leakPerDay: gal(12), splashPerDay: gal(10), days: 150 },
  'water-cost': { volume: gal(5264), metered: { price: usd('11.40'), per: '1000 gal' }, trucked: { price: usd('240.00'), load: gal(4000) } },
  'bucket-test': {
    area: { value: 176, unit: 'ft2' },
    runs: [
      { pondDrop: inches(1.25), bucketDrop: inches(0.25), duration: { value: 24, unit: 'h' }, pumpRunning: true },
      { pondDrop: inches(0.75), bucketDrop: inches(0.5), duration: { value: 48, unit: 'h' }, pumpRunning: false },
    ],
  },
  lifting: { load: { value: 44, unit: 'lb' }, start: { reach: inches(23), height: inches(15) }, end: { reach: inches(23), height: inches(64) }, liftsPerMinute: 0.2, duration: 'up-to-1-h', coupling: 'fair' },
  'trench-cautions': { depth: ft(4.5), soil: 'type-c', spoilDistance: ft(3) },
  'barrier-cautions': { waterDepth: inches(30), childrenMayReachIt: true },
  'electrical-cautions': { receptacleDistance: ft(12), cordLength: ft(16), submersible: true, metalNearWater: false },
  'water-supply-cautions': { drinkingWater: true, autoFill: true, sharedPipe: false },
  'discharge-cautions': { to: 'own-ground', turbid: true, chlorinated: false, salted: false, treated: false, livingThings: true },
};
