import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { MOST_ROWS } from './table.js';

export const OUTCOMES = ['made', 'changed', 'unchanged', 'refused'] as const;
export type Outcome = (typeof OUTCOMES)[number];

@ApiSchema({ name: 'ImportRefusal' })
export class RefusalView {
  @ApiProperty({ type: 'string', description: 'The column, written as a pointer: /unitCost, or /curve/2/head for a place within the cell. Empty for the row as a whole.', example: '/curve/2/head' })
  pointer: string;

  @ApiProperty({ type: 'string', description: 'What is wrong, and what to do.' })
  detail: string;
}

@ApiSchema({ name: 'ImportedRow', description: 'What became of one row of a table.' })
export class ImportedRowView {
  @ApiProperty({ type: 'integer', description: 'The number of the row as a spreadsheet counts: the header is row 1.', example: 2 })
  row: number;

  @ApiProperty({ type: 'string', description: 'The stock number as it stands in the row.' })
  sku: string;

  @ApiProperty({ type: 'string', enum: [...OUTCOMES], description: 'What became of the row. A refused one changed nothing.' })
  outcome: Outcome;

  @ApiProperty({ type: () => [RefusalView], description: 'Why it was refused; empty otherwise.' })
  errors: RefusalView[];
}

@ApiSchema({ name: 'PartsImport', description: 'The report of an import.' })
export class PartsImportView {
  @ApiProperty({ type: 'integer', description: 'How many parts were made.' })
  made: number;

  @ApiProperty({ type: 'integer', description: 'How many parts were changed.' })
  changed: number;

  @ApiProperty({ type: 'integer', description: 'How many parts were as their rows say already.' })
  unchanged: number;

  @ApiProperty({ type: 'integer', description: 'How many rows were refused.' })
  refused: number;

  @ApiProperty({ type: () => [ImportedRowView], maxItems: MOST_ROWS, description: 'Every row, in the order of the table.' })
  rows: ImportedRowView[];
}
