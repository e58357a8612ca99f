import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { SECRET_BYTES } from '../../platform/auth/secret-token.js';
import { Field, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';

/** Of 32 random bytes some thirty differ; fewer than this is a constant or a counter and no secret. */
const FEWEST_DIFFERENT = 16;

function checkSecret(value: unknown): string | null {
  const bytes = typeof value === 'string' ? Buffer.from(value, 'base64url') : Buffer.alloc(0);
  if (bytes.length !== SECRET_BYTES || bytes.toString('base64url') !== value) return `must be ${SECRET_BYTES} bytes in base64url without padding: 43 characters`;
  return new Set(bytes).size < FEWEST_DIFFERENT ? 'must come from a cryptographic random generator; these bytes hardly differ' : null;
}

const DeviceNameField = (): PropertyDecorator => TextField({ description: 'What the phone is called in the list of devices.', max: 100, example: 'Yellow phone of the second crew' });

@ApiSchema({ name: 'DeviceInput' })
export class DeviceBody {
  @OwnIdField()
  id?: string | null;

  @TextField({ description: 'The code as it was typed, in any case, with or without hyphens, O for 0 and I or L for 1; or what the camera read, `RILLBOOK:DEVICE/` and the code.', max: 60, example: 'K7QF-2M9D-X4TW-0HBR' })
  code: string;

  @DeviceNameField()
  name: string;

  @Field(
    { description: 'A secret that the phone made: 32 bytes of a cryptographic random generator in base64url. Keep it before sending, in the phone\'s secure store, so that the same request can be sent again.', example: 'pLx0Qm1mD0fO5m0q3v7m2mYbI4o9m0cFh2H4j8k1N5s' },
    { type: 'string', minLength: 43, maxLength: 43 },
    checkSecret,
  )
  secret: string;
}

@ApiSchema({ name: 'DeviceName' })
export class DeviceNameBody {
  @DeviceNameField()
  name: string;
}

@ApiSchema({ name: 'DeviceSignIn' })
export class DeviceSignInBody {
  @TextField({ description: 'The credential that the enrolment answered with.', max: 200 })
  credential: string;
}

@ApiSchema({ name: 'DeviceRevocation' })
export class DeviceRevocationBody {
  @TextField({ description: 'Why, for the list of devices.', max: 500, optional: true, default: 'revoked', example: 'Lost at the quarry.' })
  reason?: string | null;
}

export class DevicesQuery extends ListQuery {
  @IdFilter('Only the devices of this person.')
  personId?: string;
}

@ApiSchema({ name: 'Device', description: 'A phone that signs in for one person.' })
export class DeviceView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The device.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person that it speaks for.' })
  personId: string;

  @ApiProperty({ type: 'string', description: 'What it is called.' })
  name: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who made the code that it was enrolled with.' })
  enrolledBy: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was enrolled.' })
  enrolledAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it last used its session, to the minute; null before the first time.' })
  lastSeenAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was shut out for good; null while it is let in.' })
  revokedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was shut out.' })
  revokedBecause: string | null;
}

@ApiSchema({ name: 'EnrolledDevice', description: 'The device, and what it signs in with.' })
export class EnrolledDeviceView extends DeviceView {
  @ApiProperty({ type: 'string', description: 'For POST /v1/sessions/device. Keep it in the phone\'s secure store.' })
  credential: string;
}
