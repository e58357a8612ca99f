import { GRAVITY } from './water.js';

/** Of the flow in the Hazen-Williams equation. */
export const HAZEN_WILLIAMS_EXPONENT = 1.852;
/** Below it the flow is laminar. */
const LAMINAR_REYNOLDS = 2_000;
/** Above it the flow is turbulent; the Colebrook equation begins. */
export const TURBULENT_REYNOLDS = 4_000;

/** Mean velocity, m/s, of a flow in m3/s through a round pipe of an inner diameter in m. */
export function velocity(flow: number, diameter: number): number {
  return (4 * flow) / (Math.PI * diameter * diameter);
}

/**
 * Head loss by Hazen-Williams for each metre of pipe and each (m3/s)^1.852: 10.67 / (C^1.852 · D^4.871). This is the
 * form of hydraulic solvers; the textbook form 0.2083 (100/C)^1.852 Q^1.852/d^4.8655 lies up to 1.5 % above it.
 * Range: water near 60 °F, turbulent, inner diameter of about 2 in and more, under 10 ft/s.
 * @param diameter inner, m
 * @param c 150 for plastic in design (NRCS 430HH, 2002)
 */
export function hazenWilliamsResistance(diameter: number, c: number): number {
  return 10.67 / (c ** HAZEN_WILLIAMS_EXPONENT * diameter ** 4.871);
}

/**
 * Swamee and Jain's explicit friction factor. Range: Re 5e3 to 1e8, ε/D 1e-6 to 5e-2.
 * @see Swamee & Jain 1976, as cited by the documentation of the open-source `fluids`
 */
export function swameeJain(reynolds: number, relativeRoughness: number): number {
  return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

/**
 * Darcy's friction factor: 64/Re when laminar, Colebrook's equation when turbulent, and straight between the two in the
 * transition, where no formula is reliable.
 * @param reynolds above 0
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_REYNOLDS) return 64 / reynolds;
  if (reynolds >= TURBULENT_REYNOLDS) return colebrook(reynolds, relativeRoughness);
  const share = (reynolds - LAMINAR_REYNOLDS) / (TURBULENT_REYNOLDS - LAMINAR_REYNOLDS);
  return (1 - share) * (64 / LAMINAR_REYNOLDS) + share * colebrook(TURBULENT_REYNOLDS, relativeRoughness);
}

/** 1/√f = −2 log₁₀(ε/3.7D + 2.51/(Re √f)), by repetition; each round gains more than one digit. */
function colebrook(reynolds: number, relativeRoughness: number): number {
  let inverse = 1 / Math.sqrt(swameeJain(reynolds, relativeRoughness));
  for (let round = 0; round < 12; round += 1) {
    const better = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * inverse) / reynolds);
    const moved = Math.abs(better - inverse);
    inverse = better;
    if (moved < 1e-10) break;
  }
  return 1 / (inverse * inverse);
}

/** Head loss by Darcy-Weisbach, m for each m of pipe. Flow m3/s, diameter and roughness m, viscosity m2/s. */
export function darcyWeisbachGradient(flow: number, diameter: number, roughness: number, viscosity: number): number {
  if (flow === 0) return 0;
  const speed = velocity(flow, diameter);
  const factor = frictionFactor((speed * diameter) / viscosity, roughness / diameter);
  return (factor / diameter) * ((speed * speed) / (2 * GRAVITY));
}
