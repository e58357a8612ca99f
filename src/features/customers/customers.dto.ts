import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { EmailField, OwnIdField, TextField } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'CustomerInput' })
export class CustomerBody {
  @OwnIdField()
  id?: string | null;

  @TextField({ description: 'The name on documents.', max: 200, example: 'Marta Ellingsworth' })
  name: string;

  @EmailField({ description: 'The e-mail address.', optional: true, example: 'marta@example.com' })
  email?: string | null;

  @TextField({ description: 'The telephone number.', max: 40, optional: true, example: '+1 555 0123' })
  phone?: string | null;

  @TextField({ description: 'Where bills go, one line below the other.', max: 500, multiline: true, optional: true, example: '4 Osier Court\nAlder Falls, MI 48000' })
  billingAddress?: string | null;

  @TextField({ description: 'What bothers the customer, in their own words.', max: 4000, multiline: true, optional: true, example: 'Mosquitoes all summer, and the pump has stopped.' })
  concerns?: string | null;
}

@ApiSchema({ name: 'Customer', description: 'Who asks for the work and pays for it.' })
export class CustomerView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The customer.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The name on documents.' })
  name: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'The e-mail address.' })
  email: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The telephone number.' })
  phone: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Where bills go, one line below the other.' })
  billingAddress: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What bothers the customer, in their own words.' })
  concerns: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the customer was entered.' })
  createdAt: string;
}
