import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { DayJobView } from './day-job.view.js';

@ApiSchema({ name: 'DayCaution' })
export class DayCautionView {
  @ApiProperty({ type: 'string', description: 'What it is about.' })
  topic: string;

  @ApiProperty({ type: 'string', description: 'What to heed.' })
  text: string;
}

@ApiSchema({ name: 'DaySheet', description: 'All that a person needs for a day, in one answer that fits a weak signal. No prices.' })
export class DaySheetView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'Whose day.' })
  personId: string;

  @ApiProperty({ type: 'string', description: 'Their name.' })
  personName: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day, at each site.' })
  date: string;

  @ApiProperty({ type: () => [DayJobView], description: 'The jobs that the person is planned for, and those on which they have hours that day; by the first start.' })
  jobs: DayJobView[];

  @ApiProperty({ type: () => [DayCautionView], description: 'The usual cautions, not a complete list. Local code and licensed practice come first wherever they differ.' })
  cautions: DayCautionView[];

  @ApiProperty({ type: 'boolean', description: 'Whether there are more jobs than the sheet shows.' })
  more: boolean;
}
