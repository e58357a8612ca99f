import { Decimal } from '../../../domain/decimal.js';
import { kindOf, type Quantity, toSi } from '../../../domain/quantity/index.js';
import type { FittingKind } from '../../../domain/trade/hydraulics/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, inPartUnit, type Verdict } from '../choice.js';
import { feet, inches } from './shown.js';

/** Makers of one size differ by so much inside; the next wall thickness, which sockets do not tell apart, by more. */
const SAME_SIZE = 0.03;

/** Pipe of one size: by length, or by the piece when the length of a piece is known. @param lengthM above 0 */
export function choosePipe(parts: readonly PartEntity[], diameterM: number, lengthM: number): Choice {
  return choose(parts, (part) => {
    const { attributes } = part;
    if (attributes?.kind !== 'pipe') return { reason: NO_SIZE };
    const other = otherSize(attributes.innerDiameter, diameterM);
    if (other !== null) return { reason: other };
    const byLength = inPartUnit(lengthM, 'length', part);
    if (byLength !== null) return { quantity: byLength, why: `${feet(lengthM)} of the surveyed run are of this size.` };
    if (kindOf(part.unit) !== 'count' || !attributes.pieceLength) return { reason: `It is sold by ${part.unit}, and the length of a piece is not in the catalog.` };
    const pieceM = toSi(attributes.pieceLength);
    const pieces = Math.ceil(lengthM / pieceM - 1e-9);
    return { quantity: new Decimal(pieces), why: `${feet(lengthM)} of the surveyed run are of this size; a piece is ${feet(pieceM)} long.`, cautions: pieces > 1 ? ['Couplings between pieces of pipe are not counted.'] : [] };
  });
}

/** Fittings of one kind for pipe of one size. */
export function chooseFittings(parts: readonly PartEntity[], kind: FittingKind, diameterM: number, count: number): Choice {
  const ofKind = parts.filter(({ attributes }) => attributes?.kind === 'fitting' && (attributes.fittingKind ?? kind) === kind);
  return choose(ofKind, ({ attributes, unit }): Verdict => {
    if (attributes?.kind !== 'fitting' || !attributes.fittingKind) return { reason: 'Which fitting it is, is not in the catalog.' };
    const other = otherSize(attributes.innerDiameter, diameterM);
    if (other !== null) return { reason: other };
    return kindOf(unit) === 'count' ? { quantity: new Decimal(count), why: `${count} in the surveyed run at this size.` } : { reason: `It is sold by ${unit}, not by the piece.` };
  });
}

const NO_SIZE = 'Its inner diameter is not in the catalog.';

function otherSize(innerDiameter: Quantity | null | undefined, wantedM: number): string | null {
  if (!innerDiameter) return NO_SIZE;
  const ownM = toSi(innerDiameter);
  return Math.abs(ownM - wantedM) <= SAME_SIZE * wantedM ? null : `It is ${inches(ownM)} inside; the surveyed run is ${inches(wantedM)}.`;
}
