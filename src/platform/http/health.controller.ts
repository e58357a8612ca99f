import { Controller, Get } from '@nestjs/common';
import { ApiOperation, ApiProperty, ApiResponse, ApiSchema } from '@nestjs/swagger';
import { DataSource } from 'typeorm';
import { Open } from '../auth/allow.js';
import { ApiProblems } from './api.js';
import { Draining } from './draining.js';
import { Problem } from './problem.js';

@ApiSchema({ name: 'Health', description: 'How the service is.' })
export class HealthView {
  @ApiProperty({ type: 'string', enum: ['ok'], description: 'Always ok; anything else is a problem.' })
  status: string;
}

@Controller('health')
export class HealthController {
  constructor(
    private readonly draining: Draining,
    private readonly dataSource: DataSource,
  ) {}

  @Get('live')
  @Open()
  @ApiOperation({ summary: 'Whether the process runs' })
  @ApiResponse({ status: 200, description: 'It runs.', type: HealthView })
  @ApiProblems(['unexpected'])
  live(): HealthView {
    return { status: 'ok' };
  }

  @Get('ready')
  @Open()
  @ApiOperation({ summary: 'Whether the service can do its work: the database answers, and it is not about to stop' })
  @ApiResponse({ status: 200, description: 'It can.', type: HealthView })
  @ApiProblems(['unavailable', 'unexpected'])
  async ready(): Promise<HealthView> {
    if (this.draining.active) throw new Problem('unavailable', 'The service is about to stop.');
    await this.dataSource.query('SELECT 1');
    return { status: 'ok' };
  }
}
