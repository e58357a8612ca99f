import { Decimal } from '../../domain/decimal.js';
import { convert } from '../../domain/quantity/index.js';
import { takeoffValue } from '../../domain/trade/index.js';
import type { HaulCycleBody, HaulCycleView, HoursBandView } from '../calculations/index.js';
import type { LaborRuleBody, LaborRuleEntity } from '../labor-rules/index.js';
import type { PricingRule } from '../quotes/index.js';
import type { HaulComparisonView, HaulWork, Verdict } from './haul.views.js';
import { hoursBy, type LaborSetting } from './propose-labor.js';
import type { Scope } from './scopes.js';

/** The haul that was asked for, with what it comes to. */
export interface Haul {
  readonly asked: HaulCycleBody;
  readonly cycle: HaulCycleView;
}

/** A labor rule holds no more hours for a unit, and no finer ones. */
const MOST_PER_UNIT = 10_000;
const SCALE = 4;

const VERBS: Readonly<Record<HaulWork, string>> = { digging: 'Dig sediment', hauling: 'Haul sediment', 'digging-and-hauling': 'Dig and haul sediment' };

/**
 * The comparison for each scope that moves sediment.
 * @param codeOf the cost code of a scope
 */
export function compareHaul(scopes: readonly Scope[], codeOf: (scope: Scope) => string, haul: Haul, setting: LaborSetting): Map<Scope, HaulComparisonView> {
  const works = [...haulWorks(scopes, haul)];
  const rates = works.map(([scope]) => flatPerYd3(setting.rules.get(codeOf(scope))));
  const flatWhole = rates.reduce<number | null>((sum, rate) => (sum === null || rate === null ? null : sum + rate), 0);
  return new Map(works.map(([scope, work]) => [scope, comparison(work, codeOf(scope), flatWhole, haul, setting)]));
}

/** What each scope does of the haul: of the two together one digs and one hauls; alone, either does both. */
function haulWorks(scopes: readonly Scope[], { cycle }: Haul): Map<Scope, HaulWork> {
  const there = scopes.filter((scope) => scope === 'clean-out' || scope === 'haul-away');
  const dug = cycle.diggingHoursPerYd3 > 0;
  if (there.length < 2) return new Map(there.map((scope) => [scope, dug ? 'digging-and-hauling' : 'hauling']));
  return new Map<Scope, HaulWork>([...(dug ? [['clean-out', 'digging'] as const] : []), ['haul-away', 'hauling']]);
}

function comparison(work: HaulWork, costCode: string, flatWhole: number | null, { asked, cycle }: Haul, setting: LaborSetting): HaulComparisonView {
  const { survey, takeoff } = setting.measured;
  const rule = setting.rules.get(costCode);
  const perYd3 = { digging: cycle.diggingHoursPerYd3, hauling: cycle.haulingHoursPerYd3, 'digging-and-hauling': cycle.hoursPerYd3 }[work];
  const laborRule = perYd3 > MOST_PER_UNIT ? null : asRule(work, costCode, perYd3, rule, asked, survey.surveyedOn);
  const volume = takeoffValue(takeoff, 'sedimentVolume', 'yd3');
  return {
    work,
    quantity: volume && { value: volume.value, unit: 'yd3' },
    flat: rule === undefined ? null : { hoursPerYd3: flatPerYd3(rule), hours: hoursBy(rule, setting), verdict: verdictOn(flatWhole, cycle.band) },
    cycle: { hoursPerYd3: perYd3, hours: laborRule && hoursBy(considered(laborRule), setting), verdict: verdictOn(cycle.hoursPerYd3, cycle.band) },
    band: cycle.band,
    laborRule,
    working: cycle.working,
    warnings: [
      ...cycle.warnings,
      ...(laborRule === null ? [`More than ${MOST_PER_UNIT} h for 1 yd3 are no labor rule: check what was entered.`] : []),
      ...(survey.accessFactor.eq(1) ? [] : [`Both totals are multiplied by the survey's access factor of ${survey.accessFactor.toFixed()}; the cycle already knows the way and the gate, so see that they are not counted twice.`]),
    ],
  };
}

/** Hours for 1 yd3 of sediment by a rule, without its set-up; null when there is none or it goes by something else. */
function flatPerYd3(rule: LaborRuleEntity | undefined): number | null {
  return rule?.quantity === 'sedimentVolume' ? rule.hoursPerUnit.times(convert(1, 'yd3', rule.unit)).toNumber() : null;
}

function verdictOn(hoursPerYd3: number | null, band: HoursBandView | null): Verdict {
  if (hoursPerYd3 === null || band === null) return 'not-judged';
  if (hoursPerYd3 < band.doubtBelow || hoursPerYd3 > band.doubtAbove) return 'doubted';
  return hoursPerYd3 < band.usualFrom || hoursPerYd3 > band.usualTo ? 'unusual' : 'usual';
}

/** In force from the survey's day, so that this very survey is priced by it. */
function asRule(work: HaulWork, costCode: string, perYd3: number, rule: LaborRuleEntity | undefined, { carrier, distance }: HaulCycleBody, surveyedOn: string): LaborRuleBody {
  const alike = rule?.quantity === 'sedimentVolume' ? rule : undefined;
  return {
    costCode,
    name: work === 'digging' ? VERBS[work] : `${VERBS[work]} by ${carrier}, ${distance.value} ${distance.unit} one way`,
    quantity: 'sedimentVolume',
    unit: 'yd3',
    setupHours: alike?.setupHours.toFixed() ?? '0',
    hoursPerUnit: new Decimal(perYd3).toDecimalPlaces(SCALE).toFixed(),
    minimumHours: alike?.minimumHours.toFixed() ?? '0',
    effectiveFrom: surveyedOn,
  };
}

function considered({ costCode, name, quantity, unit, ...hours }: LaborRuleBody): PricingRule {
  const figures = { setupHours: new Decimal(hours.setupHours), hoursPerUnit: new Decimal(hours.hoursPerUnit), minimumHours: new Decimal(hours.minimumHours) };
  return { id: 'haul cycle', version: 1, costCode, name, quantity, unit, ...figures };
}
