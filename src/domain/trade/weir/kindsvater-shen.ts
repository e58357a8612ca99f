import { plain } from '../../decimal.js';
import { requireWithin } from '../input-checks.js';

/** Angles of the notch, degrees, that the curves of coefficient and correction cover (USBR). */
const ANGLES = { least: 25, most: 100 } as const;

/**
 * Flow through a V-notch of any angle: Q = 4.28 C_e tan(θ/2) (h + k_h)^2.5, ft and ft3/s, C_e and k_h by fits to the
 * published curves. A notch at 90 degrees has 0.578 and 0.0029 ft.
 * @throws DomainError at /notchDegrees
 * @see USBR Water Measurement Manual, ch. 7 §7; the fits as a public program has them (read)
 */
export function kindsvaterShen(head: number, degrees: number): { flow: number; expression: string } {
  requireWithin('/notchDegrees', degrees, ANGLES.least, ANGLES.most, 'degrees');
  const coefficient = 0.607165052 - 0.000874466963 * degrees + 6.10393334e-6 * degrees ** 2;
  const correction = 0.0144902648 - 0.00033955535 * degrees + 3.29819003e-6 * degrees ** 2 - 1.06215442e-8 * degrees ** 3;
  const slope = Math.tan((degrees * Math.PI) / 360);
  return {
    flow: 4.28 * coefficient * slope * (head + correction) ** 2.5,
    expression: `4.28 × ${plain(coefficient)} × ${plain(slope)} × (${plain(head)} + ${plain(correction)})^2.5`,
  };
}
