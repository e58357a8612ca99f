import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { OwnIdField, TextField } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'CalendarFeedInput' })
export class CalendarFeedBody {
  @OwnIdField()
  id?: string | null;

  @TextField({ description: 'Where it is used, so that the right one can be revoked.', max: 80, example: 'Kitchen tablet' })
  name: string;
}

@ApiSchema({ name: 'CalendarFeed', description: 'A subscription of one person to their own visits.' })
export class CalendarFeedView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The feed.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Whose visits it shows.' })
  personId: string;

  @ApiProperty({ type: 'string', description: 'Where it is used.' })
  name: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The enrolled device that it was made on: when that is revoked, so is the feed. null for one made after a sign-in with a password.' })
  deviceId: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was revoked; its address has answered 404 since.' })
  revokedAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was made.' })
  createdAt: string;
}

@ApiSchema({ name: 'NewCalendarFeed', description: 'A feed with its address, which is told this once.' })
export class NewCalendarFeedView extends CalendarFeedView {
  @ApiProperty({ type: 'string', nullable: true, description: 'Where a calendar subscribes: this path at the address of this service. Whoever has it can read the visits, so it is told once and kept only as a digest: null when the request is repeated; revoke the feed then, and make another one.', example: '/v1/calendar/AbCd….ics' })
  path: string | null;
}
