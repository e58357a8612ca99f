import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';
import { make } from '../support/test-quote.js';

const usd = (amount: string): object => ({ amount, currency: 'USD' });
const q = (value: number, unit: string): object => ({ value, unit });

/** 24 × 16 ft: 9.1 yd3 of sediment, an edge of 63.46 ft. */
const SURVEY = {
  surveyedOn: '2026-05-04',
  outline: { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') },
  probes: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }, { toSediment: 22, toBottom: 30 }, { toSediment: 16, toBottom: 25 }] },
  accessFactor: '1.15',
  reclaimedMaterials: [{ kind: 'stone', quantity: q(1, 'ton') }, { kind: 'plants', quantity: q(12, 'each') }, { kind: 'plants', quantity: q(3, 'each') }],
};

interface Labor {
  costCode: string;
  description: string;
  quantity: string | null;
  hours: string | null;
  working: object | null;
}

interface Proposal {
  items: { scope: string; labor: Labor[]; hours: string; warnings: string[]; parts: { suggested: { partId: string } | null }[] }[];
  hours: string;
  draft: { sections: { key: string; phase: number; optional: boolean }[]; labor: { section: string; costCode: string }[]; parts: { section: string; partId: string }[]; other: object[] };
}

interface Quote {
  id: string;
  lines: { kind: string; hours: string | null; section: string }[];
  sections: { key: string; title: string; phase: number; optional: boolean }[];
}

describe('a proposal as the draft of a quote', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;
  let survey: string;
  const answerTo = (body: object, surveyId = survey) => company.estimator.post(`/v1/surveys/${surveyId}/proposal`, body);
  const propose = async (body: object, surveyId = survey): Promise<Proposal> => {
    const answer = await answerTo(body, surveyId);
    expect([answer.status, answer.status === 200 ? '' : answer.text]).toEqual([200, '']);
    return answer.body as Proposal;
  };
  const quote = async (body: object): Promise<Quote> => {
    const answer = await company.estimator.post('/v1/quotes', { title: 'Renovation', ...body });
    expect([answer.status, answer.status === 201 ? '' : answer.text]).toEqual([201, '']);
    return answer.body as Quote;
  };
  const rule = (costCode: string, quantity: string, unit: string, hours: object = {}): Promise<string> => make(company.owner, '/v1/labor-rules', { costCode, name: `Rule for ${costCode}`, quantity, unit, setupHours: '3', hoursPerUnit: '1.75', minimumHours: '6', effectiveFrom: '2026-01-01', ...hours });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
    survey = await make(company.owner, '/v1/surveys', { featureId, ...SURVEY });
    await make(company.owner, '/v1/parts', { sku: 'SKIM', name: 'Skimmer', unit: 'each', unitCost: usd('300.00'), markupPercent: '30', packSize: '1', taxCategory: 'materials', attributes: { kind: 'skimmer', flowMinimum: q(5, 'gpm'), flowMaximum: q(25, 'gpm') } });
    await make(company.owner, '/v1/parts', { sku: 'STONE', name: 'Stone', unit: 'ton', unitCost: usd('90.00'), markupPercent: '30', packSize: '0.5', taxCategory: 'materials', attributes: { kind: 'stone' } });
    await rule('cleanout', 'sedimentVolume', 'yd3');
    await rule('edge', 'perimeter', 'ft');
    await rule('filtration', 'count', 'each');
    await rule('planting', 'count', 'each');
    await rule('reclaim', 'count', 'each', { setupHours: '0', hoursPerUnit: '0.25', minimumHours: '0' });
  });
  afterAll(() => test.close());

  it('is taken into a quote as it is, with its phases and options', async () => {
    const { draft } = await propose({ scope: ['plants', 'edge', 'skimmer', 'clean-out'], sections: [{ scope: 'edge', phase: 2 }, { scope: 'plants', phase: 2, optional: true }, { scope: 'skimmer' }] });
    expect(draft.sections.map(({ key, phase, optional }) => [key, phase, optional])).toEqual([['clean-out', 1, false], ['edge', 2, false], ['skimmer', 1, false], ['plants', 2, true]]);
    expect(draft.other).toEqual([]);
    const made = await quote(draft);
    expect(made.sections.map(({ key, title }) => [key, title])).toEqual([['clean-out', 'Clean-out'], ['edge', 'Edge'], ['skimmer', 'Skimmer'], ['plants', 'Plants']]);
    expect(made.lines.length).toBe(draft.labor.length + draft.parts.length);
    expect((await company.estimator.post(`/v1/quotes/${made.id}/issue`)).status).toBe(200);
  });

  it('is taken into a quote in part', async () => {
    const { draft } = await propose({ scope: ['edge', 'skimmer', 'clean-out'] });
    const only = <T extends { section: string }>(items: T[]): T[] => items.filter(({ section }) => section === 'skimmer');
    const made = await quote({ surveyId: survey, sections: draft.sections.filter(({ key }) => key === 'skimmer'), labor: only(draft.labor), parts: only(draft.parts) });
    expect(made.lines.map(({ kind, section }) => [kind, section])).toEqual([['labor', 'skimmer'], ['part', 'skimmer']]);
  });

  it('makes base work of phase 1 of a scope of which nothing is said, and no section without items', async () => {
    const { draft } = await propose({ scope: ['edge', 'waterfall'] });
    expect(draft.sections).toEqual([{ key: 'edge', title: 'Edge', phase: 1, optional: false }]);
  });

  it('shows the hours that the quote then plans, for each item, each scope and all', async () => {
    const proposal = await propose({ scope: ['clean-out', 'edge', 'skimmer', 'plants'] });
    const labor = proposal.items.flatMap((item) => item.labor);
    const lines = (await quote(proposal.draft)).lines.filter(({ kind }) => kind === 'labor');
    expect(labor.map(({ hours }) => hours)).toEqual(lines.map(({ hours }) => hours));
    // Clean-out: max(6, 3 + 1.75 × 8.3776 yd3) × 1.15 = 20.31, rounded up to a quarter of an hour.
    expect(labor[0]).toMatchObject({ costCode: 'cleanout', quantity: null, hours: '20.5' });
    const sum = (hours: (string | null)[]): number => hours.reduce((total, each) => total + Number(each), 0);
    for (const { labor: own, hours } of proposal.items) expect(Number(hours)).toBeCloseTo(sum(own.map((item) => item.hours)), 9);
    expect(Number(proposal.hours)).toBeCloseTo(sum(proposal.items.map(({ hours }) => hours)), 9);
  });

  it('counts what is bought by the piece, and what is used again', async () => {
    const { items } = await propose({ scope: ['skimmer', 'plants', 'edge'] });
    const found = items.flatMap(({ labor }) => labor).map(({ costCode, quantity }) => [costCode, quantity]);
    // Two skimmers share 43.9 gpm; 12 and 3 plants are divided; a ton of stone is no number of pieces.
    expect(found).toEqual([['edge', null], ['reclaim', '1'], ['filtration', '2'], ['planting', '1'], ['reclaim', '15']]);
    expect(items[0]?.warnings.join()).toContain('counts pieces, and these were weighed');
  });

  it('keeps labor out of the draft whose rule can not be applied, and says so', async () => {
    const unprobed = await make(company.owner, '/v1/surveys', { featureId, ...SURVEY, probes: null });
    const { items, draft } = await propose({ scope: ['clean-out', 'edge'] }, unprobed);
    expect(items[0]?.labor).toEqual([expect.objectContaining({ costCode: 'cleanout', hours: null, working: null })]);
    expect(items[0]?.hours).toBe('0');
    expect(items[0]?.warnings.join()).toContain('needs probe readings');
    expect(draft.labor.map(({ costCode }) => costCode)).toEqual(['edge', 'reclaim']);
    await quote(draft);
  });

  it('takes amounts of one unit together, leaves out none at all, and does not plan for more pieces than a line holds', async () => {
    const material = async (reclaimedMaterials: object[]): Promise<Proposal['items'][number] | undefined> => {
      const mixed = await make(company.owner, '/v1/surveys', { featureId, ...SURVEY, reclaimedMaterials });
      return (await propose({ scope: ['plants'] }, mixed)).items[0];
    };
    const told = await material([{ kind: 'plants', quantity: q(0.1, 'ft3') }, { kind: 'plants', quantity: q(2, 'each') }, { kind: 'plants', quantity: q(0.2, 'ft3') }]);
    expect(told?.labor.map(({ description }) => description)).toEqual(['Rule for planting', 'Divide and repot the reclaimed plants: 0.3 ft3 + 2 each']);
    expect((await material([{ kind: 'plants', quantity: q(0, 'each') }]))?.labor).toHaveLength(1);
    const many = await material(Array.from({ length: 50 }, () => ({ kind: 'plants', quantity: q(100_000, 'each') })));
    expect(many?.labor[1]).toMatchObject({ costCode: 'reclaim', hours: null });
    expect(many?.warnings.join()).toContain('5000000 pieces are more than a line of a quote takes');
  });

  it.each([
    ['a section of a scope that is not proposed', [{ scope: 'edge' }, { scope: 'liner' }], '/sections/1/scope'],
    ['two sections of one scope', [{ scope: 'edge' }, { scope: 'edge', phase: 2 }], '/sections/1/scope'],
    ['a section of no scope', [{ scope: 'digging' }], '/sections/0/scope'],
    ['phase 0', [{ scope: 'edge', phase: 0 }], '/sections/0/phase'],
  ])('refuses %s', async (_what, sections, pointer) => {
    const { status, body } = await answerTo({ scope: ['edge'], sections });
    expect([status, body.code, body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
  });
});
