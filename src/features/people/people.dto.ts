import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ROLES, type Role } from '../../platform/auth/actor.js';
import { BooleanField, ChoiceField, DecimalField, EmailField, OwnIdField, TextField } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'PersonInput' })
export class PersonBody {
  @OwnIdField()
  id?: string | null;

  @TextField({ description: 'The name.', max: 200, example: 'Ines Varga' })
  name: string;

  @EmailField({ description: 'The e-mail address that the person signs in with; each person of a company has another.', example: 'ines@fernhollow.example' })
  email: string;

  @TextField({ description: 'The telephone number.', max: 40, optional: true })
  phone?: string | null;

  @ChoiceField({ description: 'What the person may do.', of: ROLES, example: 'crew-lead' })
  role: Role;

  @BooleanField({ description: 'Whether the person may sign in and be logged; true unless told.', optional: true, default: true })
  active?: boolean | null;

  @DecimalField({ description: 'The wage for an hour, in the company\'s currency.', min: '0', max: '100000', scale: 4, example: '28.00' })
  hourlyWage: string;

  @DecimalField({ description: 'What the employer pays on top of the wage, in percent of it.', min: '0', max: '1000', scale: 4, example: '22.5' })
  burdenPercent: string;
}

@ApiSchema({ name: 'Person', description: 'Somebody who works for the company. Wage, burden and contact are only for owner and estimator.' })
export class PersonView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The name.' })
  name: string;

  @ApiProperty({ type: 'string', enum: ROLES, description: 'What the person may do.' })
  role: Role;

  @ApiProperty({ type: 'boolean', description: 'Whether the person may sign in and be logged.' })
  active: boolean;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the person was entered.' })
  createdAt: string;

  @ApiProperty({ type: 'string', required: false, description: 'The e-mail address that the person signs in with.' })
  email?: string;

  @ApiProperty({ type: 'string', required: false, nullable: true, description: 'The telephone number.' })
  phone?: string | null;

  @ApiProperty({ type: 'string', required: false, description: 'The wage for an hour, in the company\'s currency.' })
  hourlyWage?: string;

  @ApiProperty({ type: 'string', required: false, description: 'What the employer pays on top of the wage, in percent of it.' })
  burdenPercent?: string;
}
