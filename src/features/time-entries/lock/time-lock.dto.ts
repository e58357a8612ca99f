import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { LocalDateField } from '../../../platform/http/fields/index.js';

@ApiSchema({ name: 'TimeLockInput' })
export class TimeLockBody {
  @LocalDateField({ description: 'The last day, in the company\'s zone, whose hours are settled; a day that is over. Null opens all days.', optional: true })
  lockedThrough?: string | null;
}

@ApiSchema({ name: 'TimeLock', description: 'Through which day hours are settled.' })
export class TimeLockView {
  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The last locked day, in the company\'s zone; null when none is.' })
  lockedThrough: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When the lock was moved last.' })
  lockedAt: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who moved it last.' })
  lockedBy: string | null;
}
