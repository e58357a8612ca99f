import { Controller, Get, Header, Param } from '@nestjs/common';
import { ApiOperation, ApiParam, ApiResponse } from '@nestjs/swagger';
import { Open } from '../../platform/auth/allow.js';
import { ApiProblems, Revalidated } from '../../platform/http/api.js';
import { Problem } from '../../platform/http/problem.js';
import { type Reply, taggedByContent } from '../../platform/http/reply.js';
import { ReadCalendar } from './read-calendar.js';

@Controller('v1/calendar')
export class CalendarController {
  constructor(private readonly calendar: ReadCalendar) {}

  @Get(':file')
  @Open()
  @ApiOperation({ summary: 'A person\'s visits as a calendar', description: 'iCalendar (RFC 5545), for programs that subscribe. The address is the key: `POST /v1/calendar-feeds` gives it. A change of a visit is a change of the same event; one that is off, or that the person was taken off, is shown as cancelled. Without prices. Visits of the last 60 days and all that come.' })
  @ApiParam({ name: 'file', description: 'The feed\'s token and .ics.', schema: { type: 'string' } })
  @ApiResponse({ status: 200, description: 'The calendar.', content: { 'text/calendar': { schema: { type: 'string' } } }, headers: { ETag: { description: 'The version of the calendar.', schema: { type: 'string' } } } })
  @Revalidated()
  @ApiProblems(['malformed-request', 'not-found', 'unexpected', 'unavailable'])
  @Header('content-type', 'text/calendar; charset=utf-8')
  @Header('cache-control', 'private, no-cache')
  @Header('x-content-type-options', 'nosniff')
  async read(@Param('file') file: string): Promise<Reply<string>> {
    const found = file.endsWith('.ics') ? await this.calendar.execute(file.slice(0, -'.ics'.length)) : null;
    if (found === null) throw new Problem('not-found', 'This address opens no calendar (any more). Make a new feed with POST /v1/calendar-feeds.');
    return taggedByContent(found.text, found.lastModified === null ? {} : { 'last-modified': found.lastModified.toUTCString() });
  }
}
