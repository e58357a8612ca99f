import { Injectable } from '@nestjs/common';
import { DataSource, IsNull } from 'typeorm';
import type { Actor, Role } from '../../platform/auth/actor.js';
import { hashSecret, type SecretToken } from '../../platform/auth/secret-token.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { RefreshTokenEntity } from './refresh-token.entity.js';
import { SessionEntity } from './session.entity.js';

export interface SignIn {
  readonly companyId: string;
  readonly personId: string;
  readonly passwordHash: string;
}

export interface Standing {
  readonly personId: string;
  /** The role that the person has now; null when the session has ended. */
  readonly role: Role | null;
  /** The enrolled device that opened the session, if one did. */
  readonly deviceId: string | null;
  readonly lastSeenAt: Date | null;
  /** Whether the device may not come back: it was revoked, or its person is no longer active. */
  readonly shutOut: boolean;
}

/** All SQL of the sessions' tables. */
@Injectable()
export class SessionsRepository {
  constructor(
    private readonly db: TenantDatabase,
    private readonly dataSource: DataSource,
  ) {}

  /** The people of any company with this address: the only look across companies there is. */
  async signIns(email: string): Promise<SignIn[]> {
    const rows = await this.dataSource.query<{ company_id: string; person_id: string; password_hash: string }[]>('SELECT * FROM find_sign_ins($1)', [email]);
    return rows.map((row) => ({ companyId: row.company_id, personId: row.person_id, passwordHash: row.password_hash }));
  }

  async start(actor: Actor, session: { id: string; personId: string; deviceId: string | null }, token: SecretToken, expiresAt: Date): Promise<void> {
    await this.db.write(actor, async (manager) => {
      await manager.insert(SessionEntity, { companyId: actor.companyId, ...session });
      await this.addToken(actor, session.id, token, expiresAt);
    });
  }

  async addToken(actor: Actor, sessionId: string, token: SecretToken, expiresAt: Date): Promise<void> {
    await this.db.write(actor, (manager) =>
      manager.insert(RefreshTokenEntity, { companyId: actor.companyId, id: token.id, sessionId, secretHash: hashSecret(token.secret), expiresAt }),
    );
  }

  /** The token's row, locked: of two requests with the same token, the second sees that it was used. */
  async lockToken(actor: Actor, id: string): Promise<RefreshTokenEntity | null> {
    return this.db.write(actor, (manager) => manager.findOne(RefreshTokenEntity, { where: { companyId: actor.companyId, id }, lock: { mode: 'pessimistic_write' } }));
  }

  async markUsed(actor: Actor, id: string, at: Date): Promise<void> {
    await this.db.write(actor, (manager) => manager.update(RefreshTokenEntity, { companyId: actor.companyId, id }, { usedAt: at }));
  }

  async revoke(actor: Actor, id: string, at: Date, because: string): Promise<void> {
    await this.db.write(actor, (manager) => manager.update(SessionEntity, { companyId: actor.companyId, id, revokedAt: IsNull() }, { revokedAt: at, revokedBecause: because }));
  }

  async revokeAllOf(actor: Actor, personId: string, at: Date, because: string): Promise<void> {
    await this.db.write(actor, (manager) => manager.update(SessionEntity, { companyId: actor.companyId, personId, revokedAt: IsNull() }, { revokedAt: at, revokedBecause: because }));
  }

  /** Ends the sessions that a device opened. Returns their ids. */
  async revokeAllOfDevice(actor: Actor, deviceId: string, at: Date, because: string): Promise<string[]> {
    return this.db.write(actor, async (manager) => {
      const [rows] = await manager.query<[{ id: string }[], number]>(
        'UPDATE sign_in_session SET revoked_at = $3, revoked_because = $4 WHERE company_id = $1 AND device_id = $2 AND revoked_at IS NULL RETURNING id',
        [actor.companyId, deviceId, at, because],
      );
      return rows.map((row) => row.id);
    });
  }

  /** Whether a session stands, and for whom: one query. */
  async standing(companyId: string, sessionId: string): Promise<Standing | null> {
    return this.db.read({ companyId }, async (manager) => {
      const rows = await manager.query<Standing[]>(
        `SELECT p.id AS "personId", CASE WHEN s.revoked_at IS NULL AND d.revoked_at IS NULL AND p.active THEN p.role END AS role,
                d.id AS "deviceId", d.last_seen_at AS "lastSeenAt", d.id IS NOT NULL AND (d.revoked_at IS NOT NULL OR NOT p.active) AS "shutOut"
         FROM sign_in_session s JOIN person p ON p.company_id = s.company_id AND p.id = s.person_id
         LEFT JOIN device d ON d.company_id = s.company_id AND d.id = s.device_id
         WHERE s.company_id = $1 AND s.id = $2`,
        [companyId, sessionId],
      );
      return rows[0] ?? null;
    });
  }

  /** The device that opened a session, if one did, locked against its revocation until the transaction ends. */
  async lockDevice(actor: Actor, sessionId: string): Promise<{ id: string; revoked: boolean } | null> {
    return this.db.write(actor, async (manager) => {
      const rows = await manager.query<{ id: string; revoked: boolean }[]>(
        `SELECT d.id, d.revoked_at IS NOT NULL AS revoked FROM sign_in_session s JOIN device d ON d.company_id = s.company_id AND d.id = s.device_id
         WHERE s.company_id = $1 AND s.id = $2 FOR SHARE OF d`,
        [actor.companyId, sessionId],
      );
      return rows[0] ?? null;
    });
  }

  /** Notes that a device was there, unless another instance has noted it since `unless`. */
  async markSeen(companyId: string, deviceId: string, at: Date, unless: Date): Promise<void> {
    await this.db.read({ companyId }, (manager) =>
      manager.query('UPDATE device SET last_seen_at = $3 WHERE company_id = $1 AND id = $2 AND (last_seen_at IS NULL OR last_seen_at <= $4)', [companyId, deviceId, at, unless]),
    );
  }
}
