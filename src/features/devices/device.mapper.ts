import type { DeviceEntity } from './device.entity.js';
import type { DeviceView } from './devices.dto.js';

export function toDeviceView(row: DeviceEntity): DeviceView {
  const { id, personId, name, enrolledBy, revokedBecause } = row;
  return {
    id,
    personId,
    name,
    enrolledBy,
    enrolledAt: row.createdAt.toISOString(),
    lastSeenAt: row.lastSeenAt?.toISOString() ?? null,
    revokedAt: row.revokedAt?.toISOString() ?? null,
    revokedBecause,
  };
}
