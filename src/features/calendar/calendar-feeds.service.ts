import { randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/auth/actor.js';
import { decodeSecretToken, encodeSecretToken, hashSecret, sameSecret, SECRET_BYTES } from '../../platform/auth/secret-token.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { idTaken, notFound } from '../../platform/http/problems.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { DeviceSessions } from '../sessions/index.js';
import { CalendarFeedEntity } from './calendar-feed.entity.js';
import type { CalendarFeedBody } from './calendar-feeds.dto.js';

export interface MadeFeed {
  readonly row: CalendarFeedEntity;
  /** What opens the feed; null when an earlier request made it. */
  readonly token: string | null;
}

/** The feeds of a person, and for the owner, who shuts lost phones out, everybody's. */
@Injectable()
export class CalendarFeedsService {
  private readonly store: ResourceStore<CalendarFeedEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly sessions: DeviceSessions,
  ) {
    this.store = new ResourceStore(db, CalendarFeedEntity, 'calendar feed');
  }

  /** @throws Problem 409 when the id was used with another body, 401 on a device that is being revoked */
  async create(actor: Actor, body: CalendarFeedBody): Promise<MadeFeed> {
    const { companyId, personId } = actor;
    if (personId === null) throw new Error('Only a person has a calendar.');
    const id = body.id?.toLowerCase() ?? uuidv7();
    const secret = randomBytes(SECRET_BYTES);
    const { row, created } = await this.db.write(actor, async () => {
      const deviceId = await this.sessions.deviceOf(actor);
      return this.store.create(actor, body.id ? body : { ...body, id }, { personId, name: body.name, deviceId, secretHash: hashSecret(secret) });
    });
    // The same body under the same id, but from somebody else.
    if (row.personId !== personId) throw idTaken('calendar feed', id);
    return { row, token: created ? encodeSecretToken({ companyId, id, secret }) : null };
  }

  list(actor: Actor, query: ListQuery): Promise<Page<CalendarFeedEntity>> {
    return this.store.list(actor, query, { personId: onlyOwn(actor) });
  }

  /** May be repeated. @throws Problem 404, also for somebody else's, unless the owner asks */
  revoke(actor: Actor, id: string): Promise<CalendarFeedEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      requireMaySee(actor, row);
      return row.revokedAt === null ? this.store.update(actor, id, row.version, { revokedAt: this.clock.now() }) : row;
    });
  }

  /** Those that were made on a device. Joins the transaction of the caller. */
  async revokeAllOfDevice(actor: Actor, deviceId: string): Promise<void> {
    await this.db.write(actor, (manager) =>
      manager.query('UPDATE calendar_feed SET revoked_at = $3, version = version + 1 WHERE company_id = $1 AND device_id = $2 AND revoked_at IS NULL', [actor.companyId, deviceId, this.clock.now()]),
    );
  }

  /** The feed that a token opens, or null when it opens none (any more). */
  async open(token: string): Promise<CalendarFeedEntity | null> {
    const parts = decodeSecretToken(token);
    if (parts === null) return null;
    const { companyId, id, secret } = parts;
    const row = await this.db.read({ companyId }, (manager) => manager.findOne(CalendarFeedEntity, { where: { companyId, id } }));
    return row !== null && row.revokedAt === null && sameSecret(secret, row.secretHash) ? row : null;
  }
}

function onlyOwn(actor: Actor): string | undefined {
  return actor.role === 'owner' ? undefined : (actor.personId ?? undefined);
}

function requireMaySee(actor: Actor, row: CalendarFeedEntity): void {
  const only = onlyOwn(actor);
  if (only !== undefined && only !== row.personId) throw notFound('calendar feed');
}
