import { invalidInput } from '../../platform/http/problems.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { EquipmentBody, EquipmentView } from './equipment.dto.js';
import type { EquipmentEntity } from './equipment.entity.js';

export function toEquipmentView(row: EquipmentEntity): EquipmentView {
  const { id, featureId, kind, make, model, serialNumber, installedOn, warrantyUntil, removedOn, condition, settings } = row;
  return { id, featureId, kind, make, model, serialNumber, installedOn, warrantyUntil, removedOn, condition, settings, createdAt: row.createdAt.toISOString() };
}

/** The item as the request that would make it: what a patch is merged into. */
export function toEquipmentBody(row: EquipmentEntity): EquipmentBody {
  const { featureId, kind, make, model, serialNumber, installedOn, warrantyUntil, removedOn, condition, settings } = row;
  return { featureId, kind, make, model, serialNumber, installedOn, warrantyUntil, removedOn, condition, settings };
}

/** @throws Problem 400 when the warranty ends, or the item was taken out, before it was installed */
export function toEquipmentRow(body: EquipmentBody): Omit<EquipmentEntity, keyof ResourceEntity> {
  const installedOn = body.installedOn ?? null;
  const warrantyUntil = body.warrantyUntil ?? null;
  const removedOn = body.removedOn ?? null;
  const early = Object.entries({ warrantyUntil, removedOn }).filter(([, day]) => installedOn !== null && day !== null && day < installedOn);
  if (early.length > 0) throw invalidInput(early.map(([name]) => ({ pointer: `/${name}`, detail: `must not be before ${installedOn}, the day it was installed` })));
  return {
    featureId: body.featureId,
    kind: body.kind,
    make: body.make ?? null,
    model: body.model ?? null,
    serialNumber: body.serialNumber ?? null,
    installedOn,
    warrantyUntil,
    removedOn,
    condition: body.condition ?? null,
    settings: body.settings ?? {},
  };
}
