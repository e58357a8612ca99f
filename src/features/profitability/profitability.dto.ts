import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { MoneyBody } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'JobCosts', description: 'What the job took, without what was voided.' })
export class JobCostsView {
  @ApiProperty({ type: () => MoneyBody, description: 'The job\'s part of the wages, overtime and burden of the workweeks in which people worked on it. The parts of all jobs add up to those weeks to the cent.' })
  labor: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Materials bought.' })
  material: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Disposal.' })
  disposal: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Rented machines and tools.' })
  rental: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Work of others.' })
  subcontract: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Everything else.' })
  other: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'The sum of the above.' })
  total: MoneyBody;
}

@ApiSchema({ name: 'CostCodeHours', description: 'Hours of a cost code, as decimal strings.' })
export class CostCodeHoursView {
  @ApiProperty({ type: 'string', description: 'The cost code.', example: 'cleanout' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'Hours that the accepted quote planned.', example: '20.5' })
  planned: string;

  @ApiProperty({ type: 'string', description: 'Paid hours logged, to four decimals.', example: '23.75' })
  actual: string;
}

@ApiSchema({ name: 'JobHours', description: 'Planned and paid hours of a job, as decimal strings.' })
export class JobHoursView {
  @ApiProperty({ type: 'string', description: 'Hours that the accepted quote planned.', example: '55.75' })
  planned: string;

  @ApiProperty({ type: 'string', description: 'Paid hours logged, to four decimals.', example: '61.25' })
  actual: string;

  @ApiProperty({ type: () => [CostCodeHoursView], description: 'Every code with planned or paid hours: the plan\'s in its order, then the others by name.' })
  byCostCode: CostCodeHoursView[];
}

@ApiSchema({ name: 'Profitability', description: 'Whether a job makes money, as of now.' })
export class ProfitabilityView {
  @ApiProperty({ type: () => MoneyBody, description: 'The price agreed, net of tax.' })
  contractTotal: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Billed and not void, net of tax.' })
  invoicedTotal: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'Payments received and not void, with tax, as customers pay it.' })
  receivedTotal: MoneyBody;

  @ApiProperty({ type: () => JobCostsView, description: 'What the job took.' })
  costs: JobCostsView;

  @ApiProperty({ type: () => MoneyBody, description: 'Contract less costs; below zero is a loss.' })
  margin: MoneyBody;

  @ApiProperty({ type: 'string', nullable: true, description: 'The margin in percent of the contract, to two decimals; null when the contract is 0.', example: '24.18' })
  marginPercent: string | null;

  @ApiProperty({ type: () => JobHoursView, description: 'Planned against paid hours.' })
  hours: JobHoursView;
}
