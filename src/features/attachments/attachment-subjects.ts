import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference } from '../../platform/http/problems.js';
import { CostsService } from '../costs/index.js';
import { EquipmentService } from '../equipment/index.js';
import { FeaturesService } from '../features/index.js';
import { JobsService } from '../jobs/index.js';
import type { SubjectBody, SubjectKind } from './attachments.dto.js';

/** The things that something can be attached to. */
@Injectable()
export class AttachmentSubjects {
  private readonly finders: Readonly<Record<SubjectKind, (actor: Actor, id: string) => Promise<unknown>>>;

  constructor(jobs: JobsService, features: FeaturesService, equipment: EquipmentService, costs: CostsService) {
    this.finders = {
      job: (actor, id) => jobs.find(actor, id),
      feature: (actor, id) => features.find(actor, id),
      equipment: (actor, id) => equipment.find(actor, id),
      cost: (actor, id) => costs.find(actor, id),
    };
  }

  /** @throws Problem 422 at /subject/id */
  async requireThere(actor: Actor, { kind, id }: SubjectBody): Promise<void> {
    try {
      await this.finders[kind](actor, id);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/subject/id', kind === 'equipment' ? 'piece of equipment' : kind);
      throw error;
    }
  }
}
