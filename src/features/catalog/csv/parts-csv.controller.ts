import { Controller, Req } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { csvText } from '../../../platform/http/csv-body.js';
import { ExportRoute, ImportRoute } from '../../../platform/http/csv-routes.js';
import { Reply } from '../../../platform/http/reply.js';
import { PART_COLUMNS } from './columns.js';
import { ExchangeParts } from './exchange-parts.js';
import { PartsImportView } from './import-report.dto.js';
import { MOST_ROWS } from './table.js';

const COLUMNS = PART_COLUMNS.map(({ name }) => `\`${name}\``).join(', ');
const HOW = `Columns: ${COLUMNS}. A quantity is written as a number, a space and a unit (\`30 ft\`), a pump curve as \`0 gpm @ 25 ft; 20 gpm @ 23.6 ft\`. A cell that a spreadsheet would take for a formula has an apostrophe in front.`;

@Controller('v1/parts')
export class PartsCsvController {
  constructor(private readonly exchange: ExchangeParts) {}

  @ExportRoute({ path: 'export', roles: OFFICE, summary: 'The catalog as a table', description: `All parts in the order of their stock numbers, as CSV (RFC 4180) in UTF-8. ${HOW}` })
  async write(@CurrentActor() actor: Actor): Promise<Reply<string>> {
    return new Reply(await this.exchange.write(actor), null, { 'content-type': 'text/csv; charset=utf-8; header=present', 'content-disposition': 'attachment; filename="parts.csv"' });
  }

  @ImportRoute(PartsImportView, {
    path: 'import',
    roles: OFFICE,
    summary: 'Take parts from a table',
    description: `Makes the parts whose \`sku\` is new and changes the others; takes none away. A row that can not be taken is reported and left out, and the other rows are taken. ${HOW} A column that is left out leaves what the part has; an empty cell is no value. At most ${MOST_ROWS} rows. To import what was exported changes nothing.`,
  })
  async read(@CurrentActor() actor: Actor, @Req() request: FastifyRequest): Promise<PartsImportView> {
    return this.exchange.read(actor, csvText(request));
  }
}
