import { ammoniaFromFeed } from '../../../domain/trade/filtration/index.js';
import { USUAL_FEED } from './fish.js';
import { squareFeet } from './shown.js';

/** Whether the filter's media turn over what the fish that are there give off. @param mediaAreaM2 null when it is not in the catalog */
export function mediaWarnings(mediaAreaM2: number | null, fishKg: number): string[] {
  if (fishKg <= 0) return [];
  const { feedPercentPerDay, proteinPercent, nitrificationGPerM2Day } = USUAL_FEED;
  const neededM2 = ammoniaFromFeed((fishKg * feedPercentPerDay) / 100, proteinPercent) / nitrificationGPerM2Day;
  if (mediaAreaM2 !== null && mediaAreaM2 >= neededM2) return [];
  const has = mediaAreaM2 === null ? 'what the filter has is not in the catalog' : `the filter has ${squareFeet(mediaAreaM2)}`;
  return [`The fish that are there take about ${squareFeet(neededM2)} of media (a sanity range, not a guarantee); ${has}.`];
}
