import { Injectable } from '@nestjs/common';
import { PartsService } from '../catalog/index.js';
import { LaborRulesService } from '../labor-rules/index.js';
import { COMPANY } from './content/company.js';
import { LABOR_RULES } from './content/labor-rules.js';
import { ATTRIBUTES } from './content/part-attributes.js';
import type { DemoPart } from './content/part.js';
import { PARTS } from './content/parts.js';
import type { Scene } from './scene.js';

/** Working days since the catalog was entered, and since the supplier's last list. Every quote is younger. */
const ENTERED_AGO = 590;
const LAST_LIST_AGO = 120;

/** The labor rules, and the parts with what they cost before. */
@Injectable()
export class SeedCatalog {
  constructor(
    private readonly rules: LaborRulesService,
    private readonly parts: PartsService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    for (const { inForceForDays, ...rule } of LABOR_RULES) {
      const id = scene.newId(`rule ${rule.costCode} ${inForceForDays}`, scene.calendar.moment(inForceForDays, '09:00'));
      await this.rules.create(scene.as('owner'), { id, ...rule, effectiveFrom: scene.calendar.workday(inForceForDays) });
    }
    for (const part of PARTS) await this.enter(scene, part);
  }

  private async enter(scene: Scene, { unitCost, formerCost, ...rest }: DemoPart): Promise<void> {
    const owner = scene.as('owner');
    const entered = scene.calendar.moment(ENTERED_AGO, '09:00');
    const id = scene.newId(`part ${rest.sku}`, entered);
    const attributes = ATTRIBUTES[rest.sku] ?? null;
    const at = (amount: string) => ({ ...rest, attributes, unitCost: { amount, currency: COMPANY.currency } });
    await scene.on(entered, () => this.parts.create(owner, { id, ...at(formerCost ?? unitCost) }));
    if (formerCost === undefined) return;
    await scene.on(scene.calendar.moment(LAST_LIST_AGO, '09:00'), () => this.parts.update(owner, id, 1, at(unitCost)));
  }
}
