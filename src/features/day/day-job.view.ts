import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { QuantityBody } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'DayVisit' })
export class DayVisitView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The visit.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day on which it starts, at the site: the day before for one over midnight.' })
  day: string;

  @ApiProperty({ type: 'string', description: 'When it starts, HH:MM by the site\'s clocks.', example: '07:30' })
  startTime: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'The instant at which it starts.' })
  startsAt: string;

  @ApiProperty({ type: 'integer', description: 'How many minutes it takes.' })
  lengthMinutes: number;

  @ApiProperty({ type: 'string', isArray: true, description: 'Materials and tools to bring.' })
  bring: string[];

  @ApiProperty({ type: 'string', nullable: true, description: 'What is to be done, or worth knowing.' })
  note: string | null;
}

@ApiSchema({ name: 'DaySite' })
export class DaySiteView {
  @ApiProperty({ type: 'string', description: 'Where it is, one line below the other.' })
  address: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'A link that opens a map: a geo URI (RFC 5870), where the site\'s position is known.', example: 'geo:42.28,-84.41' })
  mapLink: string | null;

  @ApiProperty({ type: 'string', description: 'The address in one line, for the search of any map.' })
  mapQuery: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'How to get in, and where to park, drain and dump.' })
  accessNotes: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What can hurt somebody there. It helps the crew prepare; it replaces neither local code nor a licensed person\'s judgment.' })
  hazards: string | null;
}

@ApiSchema({ name: 'DayCostCode' })
export class DayCostCodeView {
  @ApiProperty({ type: 'string', description: 'The cost code.', example: 'cleanout' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'Hours planned, as a decimal string.', example: '20.5' })
  planned: string;

  @ApiProperty({ type: 'string', description: 'Hours of everybody so far that count, as a decimal string, rounded to hundredths.', example: '12.25' })
  logged: string;

  @ApiProperty({ type: 'string', description: 'Planned less logged; below zero when the plan is used up.', example: '8.25' })
  remaining: string;
}

@ApiSchema({ name: 'DayPerson' })
export class DayPersonView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'Their name.' })
  name: string;

  @ApiProperty({ type: 'boolean', description: 'Whether they are planned for the same visits that day; otherwise they are on the crew of the job.' })
  comes: boolean;
}

@ApiSchema({ name: 'DayMaterial', description: 'A part of the quote that has still to be used.' })
export class DayMaterialView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The part, for `partId` of a use of material: only what names it counts as used of it.' })
  partId: string;

  @ApiProperty({ type: 'string', description: 'What it is, as quoted.', example: 'Liner, 45 mil' })
  description: string;

  @ApiProperty({ type: 'string', description: 'Quoted less used, as a decimal string.', example: '340.5' })
  quantity: string;

  @ApiProperty({ type: 'string', description: 'The unit that it is counted in.', example: 'ft2' })
  unit: string;
}

@ApiSchema({ name: 'DayKept', description: 'Material of the site that is used again: not to be thrown away.' })
export class DayKeptView {
  @ApiProperty({ type: 'string', description: 'What it is.', example: 'stone' })
  kind: string;

  @ApiProperty({ type: () => QuantityBody, description: 'How much of it the survey found.' })
  quantity: QuantityBody;

  @ApiProperty({ type: 'string', nullable: true, description: 'What to know about it.' })
  note: string | null;
}

@ApiSchema({ name: 'DayPunchItem' })
export class DayPunchItemView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The item.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'What is left to do.' })
  description: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Where.' })
  place: string | null;
}

@ApiSchema({ name: 'DayJob' })
export class DayJobView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The number that people say.', example: 'J-1001' })
  number: string;

  @ApiProperty({ type: 'string', description: 'What is to be done.' })
  title: string;

  @ApiProperty({ type: 'string', description: 'How far it is.', example: 'under-way' })
  state: string;

  @ApiProperty({ type: 'string', description: 'The IANA time zone of the site.', example: 'America/Detroit' })
  timeZone: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'The pond, stream or waterfall.' })
  featureName: string | null;

  @ApiProperty({ type: () => [DayVisitView], description: 'When the person is planned there, also since the night before; none when they only have hours there.' })
  visits: DayVisitView[];

  @ApiProperty({ type: () => DaySiteView, nullable: true, description: 'The site.' })
  site: DaySiteView | null;

  @ApiProperty({ type: 'string', isArray: true, description: 'What must come first and is not out of the way, such as a utility locate before digging.' })
  blockers: string[];

  @ApiProperty({ type: () => [DayCostCodeView], description: 'The codes that hours are planned for or charged to, in the plan\'s order.' })
  costCodes: DayCostCodeView[];

  @ApiProperty({ type: () => [DayPersonView], description: 'Who comes, and who else is on the crew.' })
  crew: DayPersonView[];

  @ApiProperty({ type: () => [DayMaterialView], description: 'What of the quoted parts has still to be used, in the order of the quote, at most 10; `GET /v1/jobs/{id}/field-totals` has all. What to bring that day is told by each visit.' })
  materials: DayMaterialView[];

  @ApiProperty({ type: () => [DayKeptView], description: 'Reclaimed materials to keep, as surveyed.' })
  keep: DayKeptView[];

  @ApiProperty({ type: () => [DayPunchItemView], description: 'The open punch-list items, at most 50, the oldest first.' })
  punchItems: DayPunchItemView[];
}
