import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { AttachmentsRepository } from './attachments.repository.js';

/** For slices that ask what hangs on a piece of equipment. */
@Injectable()
export class EquipmentAttachments {
  constructor(private readonly attachments: AttachmentsRepository) {}

  /** Whether anything that counts is attached to it, also what the actor may not see. */
  exist(actor: Actor, equipmentId: string): Promise<boolean> {
    return this.attachments.existOf(actor, equipmentId);
  }
}
