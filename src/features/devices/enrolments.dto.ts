import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'DeviceEnrolmentInput' })
export class DeviceEnrolmentBody {
  @IdField({ description: 'Whose phone it is.' })
  personId: string;
}

@ApiSchema({ name: 'DeviceEnrolment', description: 'Whether the phone has come.' })
export class DeviceEnrolmentView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The enrolment.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Whose phone is enrolled.' })
  personId: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'Until when the code is good.' })
  expiresAt: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The device that used the code; null while none has.' })
  deviceId: string | null;
}

@ApiSchema({ name: 'NewDeviceEnrolment', description: 'A code for one phone. It is shown once.' })
export class NewDeviceEnrolmentView extends DeviceEnrolmentView {
  @ApiProperty({ type: 'string', description: 'The code, to be typed where it can not be scanned.', example: 'K7QF-2M9D-X4TW-0HBR' })
  code: string;

  @ApiProperty({ type: 'string', description: 'What the picture holds: a URI of this service\'s own, then the code.', example: 'RILLBOOK:DEVICE/K7QF-2M9D-X4TW-0HBR' })
  payload: string;

  @ApiProperty({ type: 'string', description: 'The payload as a QR code (ISO/IEC 18004): an SVG image.' })
  qr: string;
}
