const ft = (value: number): object => ({ value, unit: 'ft' });
const yd3 = (value: number): object => ({ value, unit: 'yd3' });
const vehicle = { boxVolume: yd3(10), payload: { value: 7, unit: 'ton' } };

/** Good inputs for sediment and haul. */
export const SEDIMENT_EXAMPLES: Readonly<Record<string, object>> = {
  'sediment-by-place': {
    outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [20, 0], [20, 8], [12, 8], [12, 14], [0, 14]] },
    probes: { unit: 'in', readings: [[3, 3, 18, 27], [10, 4, 20, 30], [17, 5, 16, 25], [6, 11, 22, 30]].map(([x, y, toSediment, toBottom]) => ({ at: [x, y], toSediment, toBottom })) },
    edge: 'given',
    edgeThickness: { value: 3, unit: 'in' },
    edgeDepth: { value: 8, unit: 'in' },
  },
  'sediment-weight': { inPlaceVolume: yd3(12), waterPercent: 200, drainedWaterPercent: 60, gravity: 2.65, bulkingPercent: 20 },
  'organic-mud': { waterPercentOfWet: 85, ignitionPercentOfWet: 5 },
  dewatering: { inPlaceVolume: yd3(40), waterPercent: 300, drainedWaterPercent: 100, gravity: 2.65, bulkingPercent: 20, drainedBulkingPercent: 15, vehicle },
  'truck-loads': { looseVolume: yd3(14.4), weight: { value: 12.96, unit: 'ton' }, vehicle },
  'haul-cycle': { carrier: 'barrow', distance: ft(80), slopePercent: 4, gateWidth: ft(3), handDigging: 'loose', densityKgPerM3: 1331, bulkingPercent: 25, efficiency: 0.75, carrierVolume: { value: 3, unit: 'ft3' }, carrierPayload: { value: 240, unit: 'lb' }, feetPerMinute: 180 },
};
