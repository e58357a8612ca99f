import { decimal } from '../../../../domain/decimal.js';
import { DomainError } from '../../../../domain/errors.js';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { cutPlans, goodsPrice, planCost, type CutPlan, type PricedRoll, type RollPrice } from '../../../../domain/trade/liner/index.js';
import { OFFICE } from '../../../../platform/auth/actor.js';
import { toMoneyBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { cutWorking } from './cut-working.js';
import { LinerCutBody, LinerCutView, type LinerCutPlanView } from './liner-cut.dto.js';

const SHOWN = 5;

export const LINER_CUT = calculation({
  name: 'liner-cut',
  title: 'Cheapest cut of a liner from the rolls that can be had',
  description: 'Strips along either side, of one kind of roll or the best mix of two, joined with an overlap; a strip longer than its roll is joined across. Cheapest first, without prices the least area. Fewer seams leak less: compare the first plans. Takes and gives prices, so it is for owner and estimator.',
  input: LinerCutBody,
  output: LinerCutView,
  roles: OFFICE,
  run: (input: LinerCutBody): LinerCutView => {
    const prices = input.rolls.map(({ price, pricePer }): RollPrice | null => (price ? { amount: decimal(price.amount), per: pricePer ?? 'ft2' } : null));
    const currency = currencyOf(input);
    const rolls = input.rolls.map(({ name, width, length }, i): PricedRoll => {
      const price = prices[i] ?? null;
      const roll = { name, widthM: toSi(width), lengthM: toSi(length), wholeOnly: price?.per === 'roll' };
      return { ...roll, pricePerM: price && goodsPrice(roll, price, roll.lengthM).div(roll.lengthM).toNumber() };
    });
    const seam = input.seamPrice ? { amount: decimal(input.seamPrice.price.amount), per: input.seamPrice.per } : null;
    const seamPerM = seam === null ? 0 : seam.amount.div(toSi({ value: 1, unit: seam.per })).toNumber();
    const sheet = { lengthM: toSi(input.length), widthM: toSi(input.width) };
    const overlapM = toSi(input.seamOverlap ?? { value: 3, unit: 'in' });
    const plans = cutPlans(sheet, rolls, overlapM, seamPerM).slice(0, SHOWN);
    const priced = prices.filter((price) => price !== null);
    const cost = (plan: CutPlan) => (currency === null ? null : planCost(plan, rolls, priced, seam, currency));
    const costs = plans.map(cost);
    return {
      plans: plans.map((plan, i) => view(plan, rolls, (costs[i] && currency !== null ? toMoneyBody(costs[i], currency) : null))),
      working: cutWorking(plans[0] as CutPlan, sheet, rolls, overlapM, costs[0] ?? null, currency),
      warnings: (plans[0]?.seams ?? 0) > 0 ? ['Every seam is a place to leak: one sheet, or a liner joined in a workshop, may be worth its price. Make seams by the rules of the maker.'] : [],
    };
  },
});

/** @throws DomainError at a price in another currency, or at /seamPrice when rolls have none */
function currencyOf({ rolls, seamPrice }: LinerCutBody): string | null {
  const currency = rolls.find(({ price }) => price)?.price?.currency ?? null;
  rolls.forEach(({ price }, i) => {
    if (price && price.currency !== currency) throw DomainError.at(`/rolls/${i}/price/currency`, `All prices must be in one currency; another roll is in ${currency}.`);
  });
  if (seamPrice && currency === null) throw DomainError.at('/seamPrice', 'A price for seams needs prices for the rolls.');
  if (seamPrice && seamPrice.price.currency !== currency) throw DomainError.at('/seamPrice/price/currency', `All prices must be in one currency; the rolls are in ${currency}.`);
  return currency;
}

function view(plan: CutPlan, rolls: readonly PricedRoll[], cost: LinerCutPlanView['cost']): LinerCutPlanView {
  const feet = (metres: number): Quantity => ({ value: fromSi(metres, 'ft'), unit: 'ft' });
  const squareFeet = (m2: number): Quantity => ({ value: fromSi(m2, 'ft2'), unit: 'ft2' });
  return {
    direction: plan.direction,
    strips: plan.strips.map((strip) => ({ roll: rolls[strip.roll]?.name ?? '', count: strip.count, pieces: strip.pieces, rolls: strip.rolls, bought: feet(strip.boughtM) })),
    stripLength: feet(plan.stripLengthM),
    seams: plan.seams,
    seamLength: feet(plan.seamLengthM),
    boughtArea: squareFeet(plan.boughtM2),
    overlapArea: squareFeet(plan.overlapM2),
    waste: squareFeet(plan.wasteM2),
    wastePercent: (plan.wasteM2 / plan.boughtM2) * 100,
    cost,
  };
}
