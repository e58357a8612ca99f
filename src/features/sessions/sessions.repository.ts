import { Injectable } from '@nestjs/common';
import { DataSource, IsNull } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { hashSecret, type RefreshTokenParts } from './refresh-token.js';
import { RefreshTokenEntity } from './refresh-token.entity.js';
import { SessionEntity } from './session.entity.js';

export interface SignIn {
  readonly companyId: string;
  readonly personId: string;
  readonly passwordHash: string;
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

  async start(actor: Actor, session: { id: string; personId: string }, token: RefreshTokenParts, expiresAt: Date): Promise<void> {
    await this.db.write(actor, async (manager) => {
      await manager.insert(SessionEntity, { companyId: actor.companyId, id: session.id, personId: session.personId });
      await this.addToken(actor, session.id, token, expiresAt);
    });
  }

  async addToken(actor: Actor, sessionId: string, token: RefreshTokenParts, expiresAt: Date): Promise<void> {
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

  async findSession(actor: Pick<Actor, 'companyId'>, id: string): Promise<SessionEntity | null> {
    return this.db.read(actor, (manager) => manager.findOne(SessionEntity, { where: { companyId: actor.companyId, id } }));
  }

  async revoke(actor: Actor, id: string, at: Date, because: string): Promise<void> {
    await this.db.write(actor, (manager) => manager.update(SessionEntity, { companyId: actor.companyId, id, revokedAt: IsNull() }, { revokedAt: at, revokedBecause: because }));
  }

  async revokeAllOf(actor: Actor, personId: string, at: Date, because: string): Promise<void> {
    await this.db.write(actor, (manager) => manager.update(SessionEntity, { companyId: actor.companyId, personId, revokedAt: IsNull() }, { revokedAt: at, revokedBecause: because }));
  }

  /** The role of a session's person, if the session stands and the person is active: one query. */
  async standing(companyId: string, sessionId: string): Promise<string | null> {
    return this.db.read({ companyId }, async (manager) => {
      const rows = await manager.query<{ role: string }[]>(
        `SELECT p.role FROM sign_in_session s JOIN person p ON p.company_id = s.company_id AND p.id = s.person_id
         WHERE s.company_id = $1 AND s.id = $2 AND s.revoked_at IS NULL AND p.active`,
        [companyId, sessionId],
      );
      return rows[0]?.role ?? null;
    });
  }
}
