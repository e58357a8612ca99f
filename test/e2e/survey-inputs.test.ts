import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';
import { make } from '../support/test-quote.js';

const ft = (value: number) => ({ value, unit: 'ft' });
const at = (distance: number, depth: number) => ({ distance: ft(distance), depth: ft(depth) });
const pipe = { side: 'discharge', length: ft(60), innerDiameter: { value: 2.067, unit: 'in' }, fittings: [{ kind: 'elbow-90', count: 4 }, { kind: 'ball-valve', count: 1 }] };
const pipeRun = { pipes: [{ side: 'suction', length: ft(6), innerDiameter: { value: 3, unit: 'in' } }, pipe], staticLift: ft(8), suctionAt: [1, 8], dischargeAt: [23, 8.5] };
const takenAt = '2027-04-12T07:30:00-04:00';

describe('what else a survey holds', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  let equipmentId: string;
  const survey = (inputs: object = {}) => ({ featureId: pond.featureId, surveyedOn: '2027-04-12', outline: { shape: 'ellipse', length: ft(24), width: ft(16) }, ...inputs });
  const everything = () => ({
    depthProfile: [at(0, 0), at(1, 1), at(1, 2), at(14, 2.5), at(16, 0)],
    pipeRun,
    equipmentCondition: [
      { equipmentId, condition: 'Bearing loud, seal weeping', works: 'yes' },
      { kind: 'light', condition: 'Corroded', works: 'unknown' },
    ],
    reclaimedMaterials: [
      { kind: 'stone', quantity: { value: 2.5, unit: 'ton' }, note: 'Behind the shed' },
      { kind: 'plants', quantity: { value: 14, unit: 'each' } },
      { kind: 'driftwood', quantity: { value: 0.5, unit: 'yd3' } },
    ],
    waterTests: [
      { takenAt, temperature: { value: 62, unit: 'degF' }, ph: 7.8, totalAmmoniaMgPerL: 0.25, nitriteMgPerL: 0.1, nitrateMgPerL: 20, alkalinityMgPerL: 110, oxygenMgPerL: 8.2, chlorineMgPerL: 0 },
      { takenAt, ph: 8.1 },
    ],
  });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
    equipmentId = await make(company.owner, '/v1/equipment', { featureId: pond.featureId, kind: 'pump' });
  });
  afterAll(() => test.close());

  it('comes back as a crew lead entered it, for the crew too', async () => {
    const made = await company.crewLead.post('/v1/surveys', survey(everything()));
    expect([made.status, made.body]).toEqual([201, expect.objectContaining(everything())]);
    expect((await company.crew.get(`/v1/surveys/${made.body.id}`)).body).toEqual(made.body);
  });

  it('is changed by a patch: lists as a whole, the pipe run field by field, and nothing else', async () => {
    const { body } = await company.owner.post('/v1/surveys', survey(everything()));
    const path = `/v1/surveys/${body.id}`;
    const noted = await company.owner.patch(path, { findings: ['Leak'] });
    expect(noted.body).toMatchObject(everything());
    const changed = await company.owner.patch(path, { pipeRun: { staticLift: ft(9) }, depthProfile: null, waterTests: [], equipmentCondition: [{ kind: 'pump', condition: 'New', works: 'yes' }] });
    expect(changed.body).toMatchObject({ depthProfile: null, pipeRun: { ...pipeRun, staticLift: ft(9) }, waterTests: [], equipmentCondition: [{ kind: 'pump', condition: 'New', works: 'yes' }], reclaimedMaterials: everything().reclaimedMaterials });
  });

  it('refuses equipment that is not there, or is another company\'s, at its place', async () => {
    const other = await makeTestCompany(test);
    const theirs = await make(other.owner, '/v1/equipment', { featureId: (await makeTestPond(other)).featureId, kind: 'pump' });
    const { body } = await company.owner.post('/v1/surveys', survey());
    for (const id of [theirs, uuidv7()]) {
      const equipmentCondition = [{ equipmentId, condition: 'Good', works: 'yes' }, { equipmentId: id, condition: 'Good', works: 'yes' }];
      const made = await company.owner.post('/v1/surveys', survey({ equipmentCondition }));
      const patched = await company.owner.patch(`/v1/surveys/${body.id}`, { equipmentCondition });
      for (const answer of [made, patched]) expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/equipmentCondition/1/equipmentId']);
    }
    expect((await company.owner.post('/v1/surveys', survey({ equipmentCondition: [{ equipmentId: equipmentId.toUpperCase(), condition: 'Good', works: 'yes' }] }))).status).toBe(201);
  });

  it.each([
    ['a profile that goes back', { depthProfile: [at(0, 0), at(5, 2), at(4, 0)] }, '/depthProfile/2/distance'],
    ['a profile of one place', { depthProfile: [at(0, 0)] }, '/depthProfile'],
    ['a depth of a mile', { depthProfile: [at(0, 0), at(1, 5280)] }, '/depthProfile/1/depth/value'],
    ['a depth below nothing', { depthProfile: [at(0, 0), at(1, -1)] }, '/depthProfile/1/depth/value'],
    ['a profile of a thousand places', { depthProfile: Array.from({ length: 1000 }, (_, i) => at(i, 1)) }, '/depthProfile'],
    ['a pipe without an opening', { pipeRun: { pipes: [{ ...pipe, innerDiameter: ft(0) }], staticLift: ft(8) } }, '/pipeRun/pipes/0/innerDiameter/value'],
    ['an unknown fitting', { pipeRun: { pipes: [{ ...pipe, fittings: [{ kind: 'knot', count: 1 }] }], staticLift: ft(8) } }, '/pipeRun/pipes/0/fittings/0/kind'],
    ['half a fitting', { pipeRun: { pipes: [{ ...pipe, fittings: [{ kind: 'exit', count: 0.5 }] }], staticLift: ft(8) } }, '/pipeRun/pipes/0/fittings/0/count'],
    ['a run without pipes', { pipeRun: { pipes: [], staticLift: ft(8) } }, '/pipeRun/pipes'],
    ['a suction without a discharge', { pipeRun: { pipes: [pipe], staticLift: ft(8), suctionAt: [1, 2] } }, '/pipeRun/dischargeAt'],
    ['a discharge without a suction', { pipeRun: { pipes: [pipe], staticLift: ft(8), suctionAt: null, dischargeAt: [1, 2] } }, '/pipeRun/suctionAt'],
    ['a place of one number', { pipeRun: { pipes: [pipe], staticLift: ft(8), suctionAt: [1], dischargeAt: [1, 2] } }, '/pipeRun/suctionAt'],
    ['a place in words', { pipeRun: { pipes: [pipe], staticLift: ft(8), suctionAt: [1, 2], dischargeAt: [1, 'two'] } }, '/pipeRun/dischargeAt/1'],
    ['a place on the moon', { pipeRun: { pipes: [pipe], staticLift: ft(8), suctionAt: [1e9, 2], dischargeAt: [1, 2] } }, '/pipeRun/suctionAt/0'],
    ['a run without a lift', { pipeRun: { pipes: [pipe] } }, '/pipeRun/staticLift'],
    ['equipment without a name', { equipmentCondition: [{ condition: 'Good', works: 'yes' }] }, '/equipmentCondition/0/kind'],
    ['equipment that works now and then', { equipmentCondition: [{ kind: 'pump', condition: 'Good', works: 'sometimes' }] }, '/equipmentCondition/0/works'],
    ['reclaimed concrete', { reclaimedMaterials: [{ kind: 'concrete', quantity: { value: 1, unit: 't' } }] }, '/reclaimedMaterials/0/kind'],
    ['stone by the hour', { reclaimedMaterials: [{ kind: 'stone', quantity: { value: 1, unit: 'h' } }] }, '/reclaimedMaterials/0/quantity/unit'],
    ['stone without a unit', { reclaimedMaterials: [{ kind: 'stone', quantity: { value: 1 } }] }, '/reclaimedMaterials/0/quantity/unit'],
    ['less than no plants', { reclaimedMaterials: [{ kind: 'plants', quantity: { value: -1, unit: 'each' } }] }, '/reclaimedMaterials/0/quantity/value'],
    ['a test without a figure', { waterTests: [{ takenAt, temperature: null }] }, '/waterTests/0'],
    ['a test at no time', { waterTests: [{ ph: 7 }] }, '/waterTests/0/takenAt'],
    ['a pH of 15', { waterTests: [{ takenAt, ph: 15 }] }, '/waterTests/0/ph'],
    ['boiling water', { waterTests: [{ takenAt, temperature: { value: 212, unit: 'degF' } }] }, '/waterTests/0/temperature/value'],
    ['a misspelt figure', { waterTests: [{ takenAt, pH: 7 }] }, '/waterTests/0/pH'],
  ])('refuses %s', async (_what, inputs, pointer) => {
    const { status, body } = await company.owner.post('/v1/surveys', survey(inputs));
    expect([status, body.code, body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
  });
});
