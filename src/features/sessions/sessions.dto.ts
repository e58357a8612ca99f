import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ROLES, type Role } from '../../platform/auth/actor.js';
import { EmailField, IdField, TextField } from '../../platform/http/fields/index.js';
import { LONGEST_TYPED } from './passwords.dto.js';

@ApiSchema({ name: 'SignIn' })
export class SignInBody {
  @EmailField({ description: 'The person\'s e-mail address.', example: 'owner@example.com' })
  email: string;

  @TextField({ description: 'The password.', max: LONGEST_TYPED, example: 'a long sentence of your own' })
  password: string;

  @IdField({ description: 'The company, when the same address and password belong to people of several.', optional: true })
  companyId?: string | null;
}

@ApiSchema({ name: 'Refresh' })
export class RefreshBody {
  @TextField({ description: 'The refresh token of the last answer; each can be used once.', max: 200 })
  refreshToken: string;
}

@ApiSchema({ name: 'SignedInPerson', description: 'Who signed in.' })
export class SignedInPersonView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The name.' })
  name: string;

  @ApiProperty({ type: 'string', enum: ROLES, description: 'What the person may do.' })
  role: Role;
}

@ApiSchema({ name: 'SignedInCompany', description: 'For which company.' })
export class SignedInCompanyView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The company.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The company\'s name.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'The currency of its money, by its ISO 4217 letters.' })
  currency: string;

  @ApiProperty({ type: 'string', description: 'The IANA time zone of its office.' })
  timeZone: string;
}

@ApiSchema({ name: 'Session', description: 'A sign-in: two tokens, and who they stand for.' })
export class SessionView {
  @ApiProperty({ type: 'string', description: 'Send it as "Authorization: Bearer …".' })
  accessToken: string;

  @ApiProperty({ type: 'integer', description: 'Seconds until the access token expires.' })
  expiresIn: number;

  @ApiProperty({ type: 'string', description: 'Gives the next pair of tokens, once.' })
  refreshToken: string;

  @ApiProperty({ type: SignedInPersonView, description: 'Who signed in.' })
  person: SignedInPersonView;

  @ApiProperty({ type: SignedInCompanyView, description: 'For which company.' })
  company: SignedInCompanyView;
}
