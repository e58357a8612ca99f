import { ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, TextField } from '../../../platform/http/fields/index.js';

const WORKS = ['yes', 'no', 'unknown'] as const;

@ApiSchema({ name: 'EquipmentCondition' })
export class EquipmentConditionBody {
  @IdField({ description: 'The piece of equipment; leave it out for one that is not entered, and say its kind.', optional: true })
  equipmentId?: string | null;

  @TextField({ description: 'What it is, when it is not among the equipment.', max: 60, optional: true, example: 'pump' })
  kind?: string | null;

  @TextField({ description: 'In which condition it was found.', max: 500, example: 'Bearing loud, seal weeping' })
  condition: string;

  @ChoiceField({ description: 'Whether it works.', of: WORKS, example: 'unknown' })
  works: (typeof WORKS)[number];
}
