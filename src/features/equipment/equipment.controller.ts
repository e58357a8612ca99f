import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, LEADS, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toEquipmentBody, toEquipmentView } from './equipment.mapper.js';
import { EquipmentBody, EquipmentListQuery, EquipmentView } from './equipment.dto.js';
import { EquipmentService } from './equipment.service.js';

@Controller('v1/equipment')
export class EquipmentController {
  constructor(private readonly equipment: EquipmentService) {}

  @CreateRoute(EquipmentView, { roles: LEADS, summary: 'Enter a piece of equipment' })
  async create(@CurrentActor() actor: Actor, @Body() body: EquipmentBody): Promise<Reply<EquipmentView>> {
    const { row, created } = await this.equipment.create(actor, body);
    return made(toEquipmentView(row), row.version, created);
  }

  @ListRoute(EquipmentView, { roles: EVERYONE, summary: 'List the equipment' })
  async list(@CurrentActor() actor: Actor, @Query() query: EquipmentListQuery): Promise<Page<EquipmentView>> {
    return mapPage(await this.equipment.list(actor, query), toEquipmentView);
  }

  @ReadRoute(EquipmentView, { roles: EVERYONE, summary: 'Read a piece of equipment' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<EquipmentView>> {
    const row = await this.equipment.find(actor, id);
    return tagged(toEquipmentView(row), row.version);
  }

  @ChangeRoute(EquipmentBody, EquipmentView, { roles: OFFICE, summary: 'Change a piece of equipment' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<EquipmentView>> {
    const current = await this.equipment.find(actor, id);
    const row = await this.equipment.update(actor, id, version, await patched(EquipmentBody, toEquipmentBody(current), patch));
    return tagged(toEquipmentView(row), row.version);
  }
}
