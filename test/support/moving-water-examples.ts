/** 60 ft of 2 in pipe, 8 ft of lift, and a pump of 25 − 0.0035 Q² ft at Q gpm. */
const SYSTEM = {
  runs: [
    { side: 'suction', innerDiameter: { value: 3.068, unit: 'in' }, length: { value: 4, unit: 'ft' }, fittings: [{ kind: 'entrance-projecting', count: 1 }] },
    { side: 'discharge', innerDiameter: { value: 2.067, unit: 'in' }, length: { value: 60, unit: 'ft' }, hazenWilliamsC: 150, fittings: [{ kind: 'elbow-90', count: 4 }, { kind: 'gate-valve', count: 1 }, { kind: 'exit', count: 1 }] },
  ],
  staticLift: { value: 8, unit: 'ft' },
  vessels: [{ name: 'skimmer', flow: { value: 50, unit: 'gpm' }, head: { value: 0.5, unit: 'ft' } }],
  waterTemperature: { value: 60, unit: 'degF' },
};
const CURVE = [0, 20, 40, 60, 80].map((gpm) => ({ flow: { value: gpm, unit: 'gpm' }, head: { value: 25 - 0.0035 * gpm ** 2, unit: 'ft' } }));

/** Good inputs for the calculations about pipes, pumps, weirs, waterfalls and streams, by their names. */
export const MOVING_WATER_EXAMPLES: Readonly<Record<string, object>> = {
  'circulation-loop': { system: SYSTEM, pump: { curve: CURVE, powerWatts: 380 }, waterVolume: { value: 5000, unit: 'gal' }, hoursPerDay: 24, daysPerYear: 365 },
  'pump-ranking': { system: SYSTEM, wantedFlow: { value: 45, unit: 'gpm' }, pumps: [{ name: 'P 55', curve: CURVE, powerWatts: 380, price: { amount: '389.00', currency: 'USD' } }], electricityRate: '0.16', hoursPerDay: 24, daysPerYear: 365 },
  'short-circuiting': { outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } }, distance: { value: 9, unit: 'ft' } },
  'stream-flow': {
    bottomWidth: { value: 24, unit: 'in' }, sideSlope: 1, length: { value: 20, unit: 'ft' }, fall: { value: 6, unit: 'in' }, lining: 'gravel', stoneSize: { value: 0.5, unit: 'in' },
    depth: { value: 2, unit: 'in' }, system: SYSTEM, pump: { curve: CURVE }, basin: { surface: { value: 200, unit: 'ft2' }, freeboard: { value: 3, unit: 'in' } },
  },
  waterfall: { lipWidth: { value: 24, unit: 'in' }, lip: 'flat-stone', look: 'sheet', system: SYSTEM, pump: { curve: CURVE } },
  'weir-flow': { kind: 'kindsvater-carter', head: { value: 0.25, unit: 'ft' }, crest: { value: 1, unit: 'ft' }, channel: { value: 1, unit: 'ft' }, crestHeight: { value: 0.5, unit: 'ft' }, downstreamHead: { value: 0, unit: 'ft' } },
};
