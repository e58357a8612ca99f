import { DomainError } from '../../domain/errors.js';
import { shortCircuit } from '../../domain/trade/hydraulics/index.js';
import { suctionToDischargeM, type SurveyEntity } from '../surveys/index.js';

/** What the places of suction and discharge let the circulation do: fresh water should not run straight back to the pump. */
export function shortCircuitWarnings(survey: SurveyEntity): string[] {
  if (survey.pipeRun === null) return [];
  const distanceM = suctionToDischargeM(survey);
  if (distanceM === null) return ['Whether suction and discharge stand too close together was not checked: the survey tells their places in an outline with a shape (pipeRun suctionAt and dischargeAt).'];
  try {
    const { share, tooClose } = shortCircuit(survey.outline, distanceM);
    return tooClose ? [`Short-circuiting: suction and discharge stand ${(share * 100).toFixed(0)} % of the longest chord of the pond apart, under half of it (common practice). Move one to the opposite end, or lead the return there by pipe.`] : [];
  } catch (error) {
    if (error instanceof DomainError) return error.violations.map(({ detail }) => detail);
    throw error;
  }
}
