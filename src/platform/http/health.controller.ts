import { Controller, Get } from '@nestjs/common';
import { ApiOperation, ApiProperty, ApiResponse, ApiSchema } from '@nestjs/swagger';
import { DataSource } from 'typeorm';
import { Open } from '../auth/allow.js';
import { ApiProblems } from './api.js';
import { Lifecycle } from './lifecycle.js';
import { Problem } from './problem.js';

@ApiSchema({ name: 'Health', description: 'How the service is.' })
export class HealthView {
  @ApiProperty({ type: 'string', enum: ['ok'], description: 'Always ok; anything else is a problem.' })
  status: string;
}

@Controller('health')
export class HealthController {
  constructor(
    private readonly lifecycle: Lifecycle,
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
  @ApiOperation({ summary: 'Whether the service can do its work: the database answers, and it is neither starting nor about to stop' })
  @ApiResponse({ status: 200, description: 'It can.', type: HealthView })
  @ApiProblems(['unavailable', 'unexpected'])
  async ready(): Promise<HealthView> {
    if (!this.lifecycle.ready) throw new Problem('unavailable', this.lifecycle.draining ? 'The service is about to stop.' : 'The service is still starting.');
    await this.dataSource.query('SELECT 1');
    return { status: 'ok' };
  }
}
