/**
 * V: North Central Regional Aquaculture Center white paper on yellow perch, 2003 (as quoted); SRAC fact sheet on the life
 * history of tilapia; US Fish and Wildlife Service habitat suitability model of channel catfish, and winter feeding of it
 * (Southeastern Association of Fish and Wildlife Agencies, 1974); Nevada draft thermal review of rainbow trout, 2015, and
 * its lethal temperature from Progressive Fish-Culturist 40, 1978; upper lethal temperatures of perch and carp (J. Fish.
 * Res. Board Canada, 1953); goldfish (Physiol. Biochem. Zool. 87, 2014); growth of carp (culture reports).
 * C: feeding of koi and goldfish.
 */
import { stateAt, type FishState, type Species } from '../../src/domain/trade/life/index.js';

it.each<[Species, number, FishState]>([
  ['yellow-perch', 73, 'best'],
  ['yellow-perch', 77, 'best'],
  ['yellow-perch', 49, 'little-feed'],
  ['yellow-perch', 50, 'growing'],
  ['yellow-perch', 79.1, 'stress'],
  ['yellow-perch', 84.4, 'stress'],
  ['yellow-perch', 84.6, 'deadly-heat'],
  ['tilapia', 85, 'best'],
  ['tilapia', 88, 'best'],
  ['tilapia', 62, 'no-feed'],
  ['tilapia', 63, 'little-feed'],
  ['tilapia', 52, 'deadly-cold'],
  ['tilapia', 53, 'no-feed'],
  ['tilapia', 102, 'stress'],
  ['tilapia', 102.3, 'deadly-heat'],
  ['channel-catfish', 79, 'best'],
  ['channel-catfish', 69, 'little-feed'],
  ['channel-catfish', 54, 'little-feed'],
  ['channel-catfish', 53.9, 'no-feed'],
  ['channel-catfish', 93, 'deadly-heat'],
  ['rainbow-trout', 60, 'best'],
  ['rainbow-trout', 67, 'stress'],
  ['rainbow-trout', 80, 'deadly-heat'],
  ['koi', 49, 'no-feed'],
  ['koi', 55, 'little-feed'],
  ['koi', 73.3, 'growing'],
  ['koi', 73.5, 'best'],
  ['koi', 86, 'best'],
  ['koi', 95.1, 'deadly-heat'],
  ['goldfish', 62, 'growing'],
  ['goldfish', 67, 'best'],
  ['goldfish', 83, 'best'],
  ['goldfish', 86, 'warm'],
  ['goldfish', 87, 'stress'],
])('%s at %d degF: %s', (species, fahrenheit, state) => {
  expect(stateAt(species, (fahrenheit - 32) / 1.8)).toBe(state);
});
