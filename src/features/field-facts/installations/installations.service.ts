import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { Clock, localDate } from '../../../platform/clock/clock.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { invalidInput } from '../../../platform/http/problems.js';
import { EquipmentService } from '../../equipment/index.js';
import { JobsService } from '../../jobs/index.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { type FactPlace, FactPlaces } from '../fact/fact-places.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { InstallationBody, type InstallationView } from './installation.dto.js';
import { InstallationEntity, type ItemStaysBecause } from './installation.entity.js';
import { MadeItem } from './made-item.js';

const STAYS: Readonly<Record<ItemStaysBecause, string>> = {
  changed: 'it was changed since it was entered',
  named: 'another record, a survey or an attachment names it',
};

@Injectable()
export class InstallationsService extends FactService<InstallationEntity, InstallationBody, InstallationView> {
  readonly kind: FactKind<InstallationEntity, InstallationBody> = {
    name: 'installation', mutation: 'installation.record', table: 'installation', what: 'installation', entity: InstallationEntity, body: InstallationBody, roles: EVERYONE,
  };

  constructor(
    db: TenantDatabase,
    places: FactPlaces,
    clock: Clock,
    private readonly equipment: EquipmentService,
    private readonly jobs: JobsService,
    private readonly item: MadeItem,
  ) {
    super(db, places, clock);
  }

  protected async columns(actor: Actor, body: InstallationBody, { job, featureId }: FactPlace): Promise<OwnColumns<InstallationEntity>> {
    if (featureId === null) throw invalidInput([{ pointer: '/featureId', detail: 'is needed: the job itself names no pond, stream or waterfall that the item could belong to' }]);
    const { kind, make = null, model = null, serialNumber = null, warrantyUntil = null } = body;
    const installedAt = toInstant(body.installedAt);
    const item = { featureId, kind, make, model, serialNumber, warrantyUntil, installedOn: localDate(installedAt, job.timeZone) };
    // Two of the crew may both take down the same pump.
    const there = serialNumber === null ? null : await this.equipment.claimSerialNumber(actor, featureId, serialNumber);
    // The item takes the id that the phone chose, so that the phone can name it before it has an answer.
    const equipmentId = there?.id ?? (await this.equipment.create(actor, { id: body.id ?? uuidv7(), ...item })).row.id;
    return { happenedAt: installedAt, equipmentId, kind, make, model, serialNumber, warrantyUntil, itemStaysBecause: null };
  }

  protected override async onVoid(actor: Actor, row: InstallationEntity): Promise<Partial<InstallationEntity>> {
    const { timeZone } = await this.jobs.find(actor, row.jobId);
    return { itemStaysBecause: await this.item.takeOut(actor, row, localDate(this.clock.now(), timeZone)) };
  }

  protected shown({ happenedAt, equipmentId, kind, make, model, serialNumber, warrantyUntil, itemStaysBecause }: InstallationEntity): Omit<InstallationView, keyof FactRecord> {
    const warnings = itemStaysBecause === null ? [] : [`When this was voided, the item of equipment stayed: ${STAYS[itemStaysBecause]}. If it is not there, the office enters the day it was taken out.`];
    return { installedAt: happenedAt.toISOString(), equipmentId, kind, make, model, serialNumber, warrantyUntil, warnings };
  }
}
