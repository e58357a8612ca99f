import { Decimal, plain } from '../../domain/decimal.js';
import { blockedBecause } from '../schedule/index.js';
import { CREW_CAUTIONS } from './cautions.js';
import type { DayJobRow, DayRow } from './day.repository.js';
import { MOST_JOBS } from './day.sql.js';
import type { DayCostCodeView, DayJobView, DaySiteView } from './day-job.view.js';
import type { DaySheetView } from './day.view.js';

export function toDaySheet(row: DayRow, date: string): DaySheetView {
  const jobs = row.jobs ?? [];
  return { personId: row.id, personName: row.name, date, jobs: jobs.slice(0, MOST_JOBS).map((job) => toDayJob(job, date)), cautions: [...CREW_CAUTIONS], more: jobs.length > MOST_JOBS };
}

function toDayJob({ id, number, title, state, timeZone, featureName, site, visits, lastDay, blockers, costCodes, crew, materials, keep, punchItems }: DayJobRow, date: string): DayJobView {
  return {
    id, number, title, state, timeZone, featureName,
    visits: (visits ?? []).map((visit) => ({ ...visit, startsAt: new Date(visit.startsAt).toISOString() })),
    site: site === null ? null : toSite(site),
    blockers: (blockers ?? []).flatMap((blocker) => blockedBecause(blocker, date, lastDay !== null && lastDay > date ? lastDay : date) ?? []),
    costCodes: (costCodes ?? []).map(toCostCode),
    crew: crew ?? [],
    materials: materials ?? [],
    keep: (keep ?? []).map(({ kind, quantity, note }) => ({ kind, quantity, note: note ?? null })),
    punchItems: punchItems ?? [],
  };
}

function toCostCode({ costCode, planned, seconds }: { costCode: string; planned: string; seconds: string }): DayCostCodeView {
  const hours = new Decimal(planned);
  const logged = new Decimal(seconds).div(3600).toDecimalPlaces(2);
  return { costCode, planned: hours.toFixed(), logged: logged.toFixed(), remaining: hours.minus(logged).toFixed() };
}

function toSite({ address, latitude, longitude, accessNotes, hazards }: NonNullable<DayJobRow['site']>): DaySiteView {
  const mapLink = latitude === null || longitude === null ? null : `geo:${plain(latitude)},${plain(longitude)}`;
  return { address, mapLink, mapQuery: address.split(/\s*[\r\n]+\s*/).filter(Boolean).join(', '), accessNotes, hazards };
}
