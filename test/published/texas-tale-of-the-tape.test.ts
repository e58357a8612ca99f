// "The Tale of the Tape: measuring pond surface area and volume", Texas extension lesson.
// V: the soundings, their sum 76, their number 23, the average 3.3 ft, and the warning that the shore zeros count.
import { takeoff, takeoffValue } from '../../src/domain/trade/index.js';

const soundings = [0, 2, 3, 6, 6, 8, 7, 5, 3, 1, 0, 0, 1, 1, 1, 3, 4, 8, 6, 6, 4, 1, 0];

function surveyed(depths: number[]) {
  return takeoff({
    outline: { shape: 'rectangle', length: { value: 100, unit: 'ft' }, width: { value: 50, unit: 'ft' } },
    probes: { unit: 'ft', readings: depths.map((depth) => ({ toSediment: depth, toBottom: depth })) },
  });
}

test('V: averages the lesson\'s 23 soundings to 3.3 ft', () => {
  expect(soundings).toHaveLength(23);
  const mean = takeoffValue(surveyed(soundings), 'meanDepth', 'ft');
  expect(mean?.value).toBeCloseTo(76 / 23, 12);
  expect(mean?.value.toFixed(1)).toBe('3.3');
});

test('V: leaving the shore zeros out deepens the pond by a fifth, so zeros are readings', () => {
  const wet = soundings.filter((depth) => depth > 0);
  const mean = takeoffValue(surveyed(wet), 'meanDepth', 'ft')?.value ?? 0;
  expect(mean).toBeCloseTo(4, 12);
  expect(mean / (76 / 23)).toBeCloseTo(1.21, 2);
});

test('D: the volume is the surface area times the average of all soundings', () => {
  const volume = takeoffValue(surveyed(soundings), 'waterVolume', 'ft3');
  expect(volume?.value).toBeCloseTo((5000 * 76) / 23, 8);
});
