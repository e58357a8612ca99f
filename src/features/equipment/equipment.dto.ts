import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, LocalDateField, OwnIdField, SettingsField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import type { Setting } from './equipment.entity.js';

@ApiSchema({ name: 'EquipmentInput' })
export class EquipmentBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The feature where it is installed.' })
  featureId: string;

  @TextField({ description: 'What it is, in a word of the trade: skimmer, pump, biological filter, doser, aerator, light, valve, or another.', max: 60, example: 'skimmer' })
  kind: string;

  @TextField({ description: 'Who made it.', max: 120, optional: true })
  make?: string | null;

  @TextField({ description: 'The maker\'s name for it.', max: 120, optional: true })
  model?: string | null;

  @TextField({ description: 'The number on its plate.', max: 120, optional: true })
  serialNumber?: string | null;

  @LocalDateField({ description: 'The day it was installed.', optional: true, example: '2019-05-20' })
  installedOn?: string | null;

  @LocalDateField({ description: 'The last day of its warranty; not before the day it was installed.', optional: true, example: '2029-05-19' })
  warrantyUntil?: string | null;

  @LocalDateField({ description: 'The day it was taken out, or was found never to have been there; not before the day it was installed.', optional: true, example: '2027-05-03' })
  removedOn?: string | null;

  @TextField({ description: 'The state it is in, in your own words.', max: 200, optional: true, example: 'Runs, but the weir door sticks' })
  condition?: string | null;

  @SettingsField({ description: 'How it is set: names to words, numbers or switches, at most 50. Write the unit into the name or the word.', optional: true, example: { 'timer on': '06:00', 'dose ml per day': 12, 'runs in winter': false } })
  settings?: Record<string, Setting> | null;
}

@ApiSchema({ name: 'Equipment', description: 'An item installed at a feature.' })
export class EquipmentView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The item.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The feature where it is installed.' })
  featureId: string;

  @ApiProperty({ type: 'string', description: 'What it is.' })
  kind: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Who made it.' })
  make: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The maker\'s name for it.' })
  model: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The number on its plate.' })
  serialNumber: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day it was installed.' })
  installedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The last day of its warranty.' })
  warrantyUntil: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day it was taken out; null while it is in place.' })
  removedOn: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The state it is in.' })
  condition: string | null;

  @ApiProperty({ type: 'object', additionalProperties: { oneOf: [{ type: 'string' }, { type: 'number' }, { type: 'boolean' }] }, description: 'How it is set: names to words, numbers or switches.' })
  settings: Record<string, Setting>;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the item was entered.' })
  createdAt: string;
}

export class EquipmentListQuery extends ListQuery {
  @IdFilter('Only the equipment of this feature.')
  featureId?: string;
}
