import { DomainError } from '../../../domain/errors.js';
import { isUnit, kindOf, type Quantity, type QuantityKind, unitsOf } from '../../../domain/quantity/index.js';
import { MOST_CURVE_POINTS } from '../attributes/index.js';

/** How a value of the request's JSON stands in a cell. `read` never sees an empty cell, which is no value. */
export interface Cell {
  /** @throws DomainError saying how the cell must be written */
  readonly read: (text: string) => unknown;
  readonly write: (value: unknown) => string;
}

const NUMBER = /^-?\d+(\.\d+)?([eE][+-]?\d+)?$/;
const QUANTITY = /^(\S+)\s+(\S+)$/;

export const text: Cell = { read: (cell) => cell, write: (value) => value as string };

/** A name of ours or a figure, around which blanks mean nothing. */
export const word: Cell = { read: (cell) => cell.trim(), write: (value) => value as string };

/** Spreadsheets shout. */
export const flag: Cell = {
  read: (cell) => {
    const word = cell.trim().toLowerCase();
    if (word === 'true' || word === 'false') return word === 'true';
    throw DomainError.at('', 'must be true or false');
  },
  write: (value) => String(value),
};

export const number: Cell = {
  read: (cell) => readNumber(cell.trim()),
  write: (value) => String(value),
};

/** "30 ft" */
export function quantity(kind: QuantityKind): Cell {
  return { read: (cell) => readQuantity(cell, kind), write: (value) => writeQuantity(value as Quantity) };
}

interface Point {
  readonly flow: Quantity;
  readonly head: Quantity;
}

/** "0 gpm @ 25 ft; 20 gpm @ 23.6 ft": the points of a pump curve. */
export const curve: Cell = {
  read: (cell) => {
    const points = cell.split(';');
    if (points.length > MOST_CURVE_POINTS) throw DomainError.at('', `must have at most ${MOST_CURVE_POINTS} points`);
    return points.map(readPoint);
  },
  write: (value) => (value as readonly Point[]).map(({ flow, head }) => `${writeQuantity(flow)} @ ${writeQuantity(head)}`).join('; '),
};

function readPoint(text: string, i: number): Point {
  const [flow, head, ...more] = text.split('@');
  if (flow === undefined || head === undefined || more.length > 0) throw DomainError.at(`/${i}`, 'must be a flow, @ and a head, such as 20 gpm @ 23.6 ft; points are parted by semicolons');
  return { flow: readQuantity(flow, 'flow', `/${i}/flow`), head: readQuantity(head, 'length', `/${i}/head`) };
}

function readNumber(cell: string, pointer = ''): number {
  if (NUMBER.test(cell)) return Number(cell);
  throw DomainError.at(pointer, 'must be a plain number with a point, such as 0.4');
}

function readQuantity(cell: string, kind: QuantityKind, pointer = ''): Quantity {
  const [, value = '', unit = ''] = QUANTITY.exec(cell.trim()) ?? [];
  const units = unitsOf(kind);
  if (isUnit(unit) && kindOf(unit) === kind) return { value: readNumber(value, pointer), unit };
  throw DomainError.at(pointer, `must be a number, a space and a unit, such as 30 ${units[1] ?? units[0]}; the units allowed are ${units.join(', ')}`);
}

function writeQuantity({ value, unit }: Quantity): string {
  return `${value} ${unit}`;
}
