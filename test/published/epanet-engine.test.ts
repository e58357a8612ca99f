/**
 * Whole pumping systems against the EPA's network solver EPANET (its engine in WebAssembly, package `epanet-js`):
 * flow and head at the operating point, within 1 %. Evidence V: both are computed here. Its friction factor is that
 * of Swamee and Jain where ours is Colebrook's, and its pump curve is straight between points that lie close together.
 */
import { Project, Workspace } from 'epanet-js';
import { operatingPoint, pumpCurve, systemCurve, type FrictionMethod, type PumpingSystem } from '../../src/domain/trade/hydraulics/index.js';
import type { CurvePoint } from '../../src/domain/trade/pump-curve/index.js';
import { feet, gpm, inches, inFeet, inGpm, LOOP, pipe, quadraticCurve } from '../domain/hydraulics-support.js';

/** Codes of the engine's toolkit (EN_FLOW, EN_HEAD); the package's types do not export their names to ES modules. */
const FLOW_OF_LINK = 8;
const HEAD_OF_NODE = 10;

const FLAT = quadraticCurve(25, 0.0035, 84, 43);
const STEEP = quadraticCurve(60, 0.02, 54, 55);
const STRONG = quadraticCurve(80, 0.0015, 230, 47);
const suction = pipe({ side: 'suction', innerDiameterM: inches(3.068), lengthM: feet(6), otherK: 0.78 });

const SYSTEMS: [string, PumpingSystem, CurvePoint[]][] = [
  ['60 ft of 2 in with 8 ft of lift', LOOP, FLAT],
  ['a long level run, all friction', { ...LOOP, staticLiftM: 0, runs: [suction, pipe({ lengthM: feet(400) })] }, FLAT],
  ['three sizes of pipe', { ...LOOP, runs: [suction, pipe({ lengthM: feet(40), otherK: 3 }), pipe({ innerDiameterM: inches(1.61), lengthM: feet(25), otherK: 2.5 })] }, FLAT],
  ['a small pipe on a steep pump', { ...LOOP, staticLiftM: feet(15), runs: [pipe({ innerDiameterM: inches(1.38), lengthM: feet(80), otherK: 4 })] }, STEEP],
  ['a filter and a skimmer in the loop', { ...LOOP, runs: [suction, pipe()], vessels: [{ name: 'skimmer', flowM3PerS: gpm(50), headM: feet(0.5) }, { name: 'filter', flowM3PerS: gpm(50), headM: feet(3) }] }, FLAT],
  ['a stream with a high lift', { ...LOOP, staticLiftM: feet(30), runs: [suction, pipe({ innerDiameterM: inches(4.026), lengthM: feet(250), otherK: 5 })] }, STRONG],
  ['old rough pipe', { ...LOOP, runs: [pipe({ hazenWilliamsC: 110, roughnessM: feet(5e-4), lengthM: feet(120), otherK: 2 })] }, FLAT],
];

describe.each(['hazen-williams', 'darcy-weisbach'] as const)('EPANET by %s', (method) => {
  it.each(SYSTEMS)('agrees on %s', async (_, system, curve) => {
    const ours = operatingPoint(pumpCurve(curve), systemCurve(system), method);
    if (ours.kind !== 'point') throw new Error(ours.kind);
    const theirs = await solve(system, curve, method);
    expect(Math.abs(inGpm(ours.flow) / theirs.gpm - 1)).toBeLessThan(0.01);
    expect(Math.abs(inFeet(ours.head) / theirs.feet - 1)).toBeLessThan(0.01);
  });
});

async function solve(system: PumpingSystem, curve: CurvePoint[], method: FrictionMethod): Promise<{ gpm: number; feet: number }> {
  const workspace = new Workspace();
  await workspace.loadModule();
  const project = new Project(workspace);
  workspace.writeFile('loop.inp', networkOf(system, curve, method));
  project.open('loop.inp', 'report.rpt', 'out.bin');
  project.solveH();
  const flow = project.getLinkValue(project.getLinkIndex('PUMP'), FLOW_OF_LINK);
  const head = (node: string): number => project.getNodeValue(project.getNodeIndex(node), HEAD_OF_NODE);
  const lift = head('AFTER') - head('BEFORE');
  project.close();
  return { gpm: flow, feet: lift };
}

/**
 * The system in EPANET's input format, in US units: pond, pump, then runs, vessels (valves of a set K) and outlet one
 * after the other. Suction runs stand behind the pump too: the flow is the same, and so is the head it has to give.
 */
function networkOf({ runs, vessels, staticLiftM }: PumpingSystem, curve: CurvePoint[], method: FrictionMethod): string {
  const roughness = (i: number): number => (method === 'hazen-williams' ? (runs[i]?.hazenWilliamsC ?? 0) : inFeet(runs[i]?.roughnessM ?? 0) * 1000);
  const places = ['AFTER', ...Array.from({ length: runs.length + vessels.length - 1 }, (_, i) => `N${i}`), 'OUTLET'];
  const link = (i: number): string => `${places[i]} ${places[i + 1]}`;
  const pipes = runs.map(({ lengthM, innerDiameterM, otherK }, i) => `P${i} ${link(i)} ${inFeet(lengthM)} ${innerDiameterM / 0.0254} ${roughness(i)} ${otherK} Open`);
  const valves = vessels.map(({ flowM3PerS, headM }, i) => {
    const diameter = 0.05;
    const speed = flowM3PerS / ((Math.PI * diameter ** 2) / 4);
    return `V${i} ${link(runs.length + i)} ${diameter / 0.0254} TCV ${headM / (speed ** 2 / (2 * 9.80665))} 0`;
  });
  return `
[JUNCTIONS]
${places.slice(0, -1).map((name) => `${name} 0 0`).join('\n')}
[RESERVOIRS]
BEFORE 0
OUTLET ${inFeet(staticLiftM)}
[PIPES]
${pipes.join('\n')}
[VALVES]
${valves.join('\n')}
[PUMPS]
PUMP BEFORE AFTER HEAD CURVE
[CURVES]
${curve.map(({ flowM3PerS, headM }) => `CURVE ${inGpm(flowM3PerS)} ${inFeet(headM)}`).join('\n')}
[OPTIONS]
UNITS GPM
HEADLOSS ${method === 'hazen-williams' ? 'H-W' : 'D-W'}
VISCOSITY ${1.217 / 1.1}
ACCURACY 0.00001
TRIALS 200
[END]
`;
}
