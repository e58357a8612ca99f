import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, NestedField, NumberField, OwnIdField, TextField, TimeZoneField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';

@ApiSchema({ name: 'Position', description: 'A place on the globe, in WGS 84.' })
export class PositionBody {
  @NumberField({ description: 'How many degrees north of the equator; below zero to the south of it.', min: -90, max: 90, example: 42.2847 })
  latitude: number;

  @NumberField({ description: 'How many degrees east of Greenwich; below zero to the west of it.', min: -180, max: 180, example: -84.4191 })
  longitude: number;
}

@ApiSchema({ name: 'SiteInput' })
export class SiteBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The customer whose site it is.' })
  customerId: string;

  @TextField({ description: 'Where it is, one line below the other.', max: 500, multiline: true, example: '4 Osier Court\nAlder Falls, MI 48000' })
  address: string;

  @TimeZoneField({ description: 'The IANA time zone that working days at the site are counted in; the company\'s unless told.', optional: true })
  timeZone?: string | null;

  @TextField({ description: 'How to get in, and where to park, drain and dump.', max: 4000, multiline: true, optional: true, example: 'Side gate 36 in wide, code at the office. Septic field left of the drive: keep machines off.' })
  accessNotes?: string | null;

  @TextField({ description: 'What can hurt somebody there. It helps the crew prepare; it replaces neither local code nor a licensed person\'s judgment.', max: 4000, multiline: true, optional: true, example: 'Buried cable along the fence; the pump outlet has no ground-fault protection.' })
  hazards?: string | null;

  @NestedField(() => PositionBody, { description: 'Where it lies, so that the crew\'s phones can open a map there.', optional: true })
  position?: PositionBody | null;
}

@ApiSchema({ name: 'Site', description: 'Where the work is.' })
export class SiteView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The site.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The customer whose site it is.' })
  customerId: string;

  @ApiProperty({ type: 'string', description: 'Where it is, one line below the other.' })
  address: string;

  @ApiProperty({ type: 'string', description: 'The IANA time zone that working days at the site are counted in.' })
  timeZone: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'How to get in, and where to park, drain and dump.' })
  accessNotes: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What can hurt somebody there.' })
  hazards: string | null;

  @ApiProperty({ type: () => PositionBody, nullable: true, description: 'Where it lies on the globe.' })
  position: PositionBody | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the site was entered.' })
  createdAt: string;
}

export class SiteListQuery extends ListQuery {
  @IdFilter('Only the sites of this customer.')
  customerId?: string;
}
