import { applyDecorators, Body, Controller, Headers, Put } from '@nestjs/common';
import { ApiHeader, ApiParam, ApiResponse } from '@nestjs/swagger';
import { type Actor, EVERYONE, LEADS } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { common, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { Problem } from '../../../platform/http/problem.js';
import { type Reply, tagged } from '../../../platform/http/reply.js';
import { CrewBody, CrewView } from './crew.dto.js';
import { type Crew, SetCrew } from './set-crew.js';

@Controller('v1/jobs')
export class CrewController {
  constructor(private readonly crew: SetCrew) {}

  @ReadRoute(CrewView, { path: ':id/crew', roles: EVERYONE, summary: 'Who is on the crew of a job' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<CrewView>> {
    return answer(id, await this.crew.read(actor, id));
  }

  @PutCrewRoute()
  async put(@CurrentActor() actor: Actor, @IdParam() id: string, @Headers('if-match') match: string | undefined, @Body() body: CrewBody): Promise<Reply<CrewView>> {
    return answer(id, await this.crew.execute(actor, id, body.personIds, versionIn(match)));
  }
}

function PutCrewRoute(): MethodDecorator {
  return applyDecorators(
    Put(':id/crew'),
    common(
      { roles: LEADS, summary: 'Say who is on the crew of a job', description: 'The whole crew; whoever is not named leaves it. May be repeated. Whom a visit names joins by that alone.' },
      ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type', 'no-such-reference', 'not-found', 'stale-version'],
    ),
    ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' }, description: 'The id.' }),
    ApiHeader({ name: 'If-Match', required: false, description: 'The ETag of the crew that was seen; with it, a crew that somebody else changed since is not overwritten.', schema: { type: 'string', example: '"3"' } }),
    ApiResponse({ status: 200, description: 'The crew, as it is now.', type: CrewView, headers: { ETag: { description: 'The version of the crew.', schema: { type: 'string' } } } }),
  );
}

/** Unlike a patch, a whole crew may be put without having been read: then it is the last word. */
function versionIn(header: string | undefined): number | null {
  if (header === undefined) return null;
  const version = /^"(\d{1,9})"$/.exec(header.trim())?.[1];
  if (version === undefined) throw new Problem('stale-version', `If-Match is ${header}, which is no ETag of this crew. Read it again, and send its ETag, such as "3".`);
  return Number(version);
}

function answer(jobId: string, { personIds, version }: Crew): Reply<CrewView> {
  return tagged({ jobId, personIds: [...personIds] }, version);
}
