/**
 * Everything that warnings of visits are made of, one row a visit, in one statement: a list of fifty visits must not
 * ask two hundred questions. $1 the company, $2 the visits' ids.
 *
 * A visit takes 24 hours at most, which lets the index on starts_at find the clashes.
 */
export const FACTS_OF_VISITS = `
SELECT v.id, last.day AS "lastDay", j.state AS "jobState", j.number AS "jobNumber",
  coalesce(people.list, '[]') AS people, coalesce(clashes.list, '[]') AS clashes, coalesce(absences.list, '[]') AS absences, coalesce(blockers.list, '[]') AS blockers
FROM visit v
JOIN job j ON j.company_id = v.company_id AND j.id = v.job_id
CROSS JOIN LATERAL (SELECT ((v.ends_at - interval '1 millisecond') AT TIME ZONE v.time_zone)::date AS day) last
LEFT JOIN LATERAL (
  SELECT jsonb_agg(jsonb_build_object('personId', p.id, 'name', p.name, 'active', p.active, 'onCrew', m.id IS NOT NULL) ORDER BY c.position) AS list
  FROM visit_person c
  JOIN person p ON p.company_id = c.company_id AND p.id = c.person_id
  LEFT JOIN job_member m ON m.company_id = c.company_id AND m.job_id = v.job_id AND m.person_id = c.person_id AND m.left_at IS NULL
  WHERE c.company_id = v.company_id AND c.visit_id = v.id AND c.left_at IS NULL
) people ON true
LEFT JOIN LATERAL (
  SELECT jsonb_agg(jsonb_build_object('personId', mine.person_id, 'visitId', o.id, 'jobNumber', oj.number, 'day', o.day, 'startTime', o.start_time, 'timeZone', o.time_zone) ORDER BY o.starts_at, o.id, mine.position) AS list
  FROM visit o
  JOIN job oj ON oj.company_id = o.company_id AND oj.id = o.job_id
  JOIN visit_person theirs ON theirs.company_id = o.company_id AND theirs.visit_id = o.id AND theirs.left_at IS NULL
  JOIN visit_person mine ON mine.company_id = o.company_id AND mine.visit_id = v.id AND mine.person_id = theirs.person_id AND mine.left_at IS NULL
  WHERE o.company_id = v.company_id AND o.id <> v.id AND o.state = 'planned'
    AND o.starts_at < v.ends_at AND o.starts_at > v.starts_at - interval '24 hours' AND o.ends_at > v.starts_at
) clashes ON true
LEFT JOIN LATERAL (
  SELECT jsonb_agg(jsonb_build_object('personId', d.person_id, 'firstDay', d.first_day, 'lastDay', d.last_day) ORDER BY c.position, d.first_day) AS list
  FROM visit_person c
  JOIN day_off d ON d.company_id = c.company_id AND d.person_id = c.person_id AND d.withdrawn_at IS NULL
    AND d.first_day <= last.day AND d.last_day >= v.day
  WHERE c.company_id = v.company_id AND c.visit_id = v.id AND c.left_at IS NULL
) absences ON true
LEFT JOIN LATERAL (
  SELECT jsonb_agg(jsonb_build_object('id', b.id, 'kind', b.kind, 'requestedOn', b.requested_on, 'clearOn', b.clear_on, 'clearedOn', b.cleared_on, 'validUntil', b.valid_until, 'reference', b.reference, 'note', b.note) ORDER BY b.id) AS list
  FROM blocker b
  WHERE b.company_id = v.company_id AND b.job_id = v.job_id AND b.withdrawn_at IS NULL
) blockers ON true
WHERE v.company_id = $1 AND v.id = ANY ($2)`;
