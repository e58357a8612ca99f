import { type Cell, curve, flag, number, quantity, text, word } from './cells.js';

/** One column of the parts table: where its value stands in the request that makes a part. */
export interface PartColumn {
  readonly name: string;
  readonly path: readonly string[];
  readonly cell: Cell;
}

const own = (name: string, cell: Cell = word, path: readonly string[] = [name]): PartColumn => ({ name, path, cell });
const attribute = (name: string, cell: Cell): PartColumn => own(name, cell, ['attributes', name]);

/** In the order of the export. The names are those of the API's fields. */
export const PART_COLUMNS: readonly PartColumn[] = [
  own('sku'),
  own('name', text),
  own('unit'),
  own('unitCost', word, ['unitCost', 'amount']),
  own('currency', word, ['unitCost', 'currency']),
  own('markupPercent'),
  own('packSize'),
  own('taxCategory', text),
  own('active', flag),
  attribute('kind', word),
  attribute('curve', curve),
  attribute('powerWatts', number),
  attribute('innerDiameter', quantity('length')),
  attribute('pieceLength', quantity('length')),
  attribute('fittingKind', word),
  attribute('rollWidth', quantity('length')),
  attribute('rollLength', quantity('length')),
  attribute('surfaceArea', quantity('area')),
  attribute('flowMinimum', quantity('flow')),
  attribute('flowMaximum', quantity('flow')),
  attribute('headLoss', quantity('length')),
  attribute('headLossFlow', quantity('flow')),
  attribute('lipWidth', quantity('length')),
  attribute('reservoirVolume', quantity('volume')),
  attribute('dosePerDay', quantity('volume')),
  attribute('doseFor', quantity('volume')),
  attribute('settingStep', quantity('volume')),
  attribute('densityKgPerM3', number),
  attribute('bulkDensityKgPerM3', number),
  attribute('voidFraction', number),
  attribute('coverArea', quantity('area')),
  attribute('depthMinimum', quantity('length')),
  attribute('depthMaximum', quantity('length')),
  attribute('species', word),
  attribute('grownMass', quantity('mass')),
];

/** The place in the table of a place in the request: /attributes/curve/2/head is /curve/2/head, /unitCost/amount is /unitCost. */
export function columnPointer(pointer: string): string {
  const column = PART_COLUMNS.find(({ path }) => pointer === `/${path.join('/')}` || pointer.startsWith(`/${path.join('/')}/`));
  if (column !== undefined) return `/${column.name}${pointer.slice(column.path.join('/').length + 1)}`;
  // What is wrong with money or attributes as a whole shows in their first column.
  return pointer.startsWith('/attributes') ? '/kind' : pointer.startsWith('/unitCost') ? '/unitCost' : pointer;
}
