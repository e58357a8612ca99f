/** More jobs than a person can go to in a day. */
export const MOST_JOBS = 30;
const MOST_PUNCH_ITEMS = 50;
/** Ten jobs must stay under 30 KB. */
const MOST_MATERIALS = 10;

/**
 * $1 company, $2 person, $3 day. One row, or none when there is no such person.
 * Hours that run, are held or void count for nothing, but a job with hours of that day is one of the day.
 * A visit over midnight, of 24 hours at most, is one of both days.
 * Days are the sites' own: an entry is looked for within a day around and then compared in the job's zone.
 */
export const DAY_SHEET = `
WITH planned AS (
  SELECT v.* FROM visit v
  JOIN visit_person p ON p.company_id = v.company_id AND p.visit_id = v.id AND p.person_id = $2 AND p.left_at IS NULL
  WHERE v.company_id = $1 AND v.day BETWEEN $3::date - 1 AND $3 AND ((v.ends_at - interval '1 millisecond') AT TIME ZONE v.time_zone)::date >= $3 AND v.state = 'planned'
), due AS (
  SELECT job_id, min(starts_at) AS first FROM (
    SELECT job_id, starts_at FROM planned
    UNION ALL
    SELECT e.job_id, e.started_at FROM time_entry e JOIN job j ON j.company_id = e.company_id AND j.id = e.job_id
    WHERE e.company_id = $1 AND e.person_id = $2 AND e.voided_at IS NULL
      AND e.started_at >= $3::date - interval '1 day' AND e.started_at < $3::date + interval '2 days' AND (e.started_at AT TIME ZONE j.time_zone)::date = $3
  ) AS either GROUP BY job_id ORDER BY first, job_id LIMIT ${MOST_JOBS + 1}
), coming AS (
  SELECT DISTINCT v.job_id, p.person_id FROM planned v JOIN visit_person p ON p.company_id = v.company_id AND p.visit_id = v.id AND p.left_at IS NULL
), logged AS (
  SELECT job_id, cost_code, sum(extract(epoch FROM ended_at - started_at) - unpaid_break_minutes * 60 - unpaid_span_seconds) AS seconds
  FROM time_entry WHERE company_id = $1 AND job_id IN (SELECT job_id FROM due) AND voided_at IS NULL AND NOT held AND ended_at IS NOT NULL
  GROUP BY job_id, cost_code
), hours AS (
  SELECT coalesce(plan.job_id, logged.job_id) AS job_id, coalesce(plan.cost_code, logged.cost_code) AS cost_code, plan.position, coalesce(plan.hours, 0) AS planned, coalesce(logged.seconds, 0) AS seconds
  FROM (SELECT * FROM job_plan WHERE company_id = $1 AND job_id IN (SELECT job_id FROM due)) AS plan
  FULL JOIN logged ON logged.job_id = plan.job_id AND logged.cost_code = plan.cost_code
  WHERE plan.hours > 0 OR logged.seconds > 0
), quoted AS (
  SELECT j.id AS job_id, l.part_id, l.unit, min(l.position) AS position, (array_agg(l.description ORDER BY l.position))[1] AS description, sum(l.quantity) AS quantity
  FROM due JOIN job j ON j.company_id = $1 AND j.id = due.job_id
  JOIN quote_revision r ON r.company_id = $1 AND r.quote_id = j.quote_id AND r.revision = j.quote_revision
  JOIN quote_line l ON l.company_id = $1 AND l.revision_id = r.id AND l.part_id IS NOT NULL AND (l.section IS NULL OR r.accepted_sections ? l.section)
  GROUP BY j.id, l.part_id, l.unit
), materials AS (
  SELECT q.job_id, q.part_id, q.position, q.description, q.unit, q.quantity - coalesce(
    (SELECT sum(u.quantity) FROM material_use u WHERE u.company_id = $1 AND u.job_id = q.job_id AND u.part_id = q.part_id AND u.unit = q.unit AND u.voided_at IS NULL), 0) AS quantity
  FROM quoted q
), jobs AS (
  SELECT due.first, due.job_id, json_build_object(
    'id', j.id, 'number', j.number, 'title', j.title, 'state', j.state, 'timeZone', j.time_zone, 'featureName', f.name,
    'site', CASE WHEN s.id IS NOT NULL THEN json_build_object('address', s.address, 'latitude', s.latitude, 'longitude', s.longitude, 'accessNotes', s.access_notes, 'hazards', s.hazards) END,
    'visits', (SELECT json_agg(json_build_object('id', v.id, 'day', v.day, 'startTime', v.start_time, 'startsAt', v.starts_at, 'lengthMinutes', v.length_minutes, 'bring', v.bring, 'note', v.note) ORDER BY v.starts_at, v.id) FROM planned v WHERE v.job_id = j.id),
    'lastDay', (SELECT max(((v.ends_at - interval '1 millisecond') AT TIME ZONE v.time_zone)::date) FROM planned v WHERE v.job_id = j.id),
    'blockers', (SELECT json_agg(json_build_object('kind', b.kind, 'requestedOn', b.requested_on, 'clearOn', b.clear_on, 'clearedOn', b.cleared_on, 'validUntil', b.valid_until, 'reference', b.reference, 'note', b.note) ORDER BY b.id) FROM blocker b WHERE b.company_id = $1 AND b.job_id = j.id AND b.withdrawn_at IS NULL),
    'costCodes', (SELECT json_agg(json_build_object('costCode', h.cost_code, 'planned', h.planned::text, 'seconds', h.seconds::text) ORDER BY h.position, h.cost_code) FROM hours h WHERE h.job_id = j.id),
    'crew', (SELECT json_agg(json_build_object('id', p.id, 'name', p.name, 'comes', c.person_id IS NOT NULL) ORDER BY c.person_id IS NULL, p.name, p.id)
      FROM person p LEFT JOIN coming c ON c.job_id = j.id AND c.person_id = p.id LEFT JOIN job_member m ON m.company_id = $1 AND m.job_id = j.id AND m.person_id = p.id AND m.left_at IS NULL
      WHERE p.company_id = $1 AND p.active AND (c.person_id IS NOT NULL OR m.person_id IS NOT NULL)),
    'materials', (SELECT json_agg(json_build_object('partId', m.part_id, 'description', m.description, 'quantity', trim_scale(m.quantity)::text, 'unit', m.unit) ORDER BY m.position)
      FROM (SELECT * FROM materials WHERE job_id = j.id AND quantity > 0 ORDER BY position LIMIT ${MOST_MATERIALS}) AS m),
    'keep', coalesce(
      (SELECT y.reclaimed_materials FROM quote_revision r JOIN survey y ON y.company_id = r.company_id AND y.id = r.survey_id WHERE r.company_id = $1 AND r.quote_id = j.quote_id AND r.revision = j.quote_revision),
      (SELECT y.reclaimed_materials FROM survey y WHERE y.company_id = $1 AND y.feature_id = j.feature_id ORDER BY y.surveyed_on DESC, y.id DESC LIMIT 1)),
    'punchItems', (SELECT json_agg(json_build_object('id', i.id, 'description', i.description, 'place', i.place) ORDER BY i.id)
      FROM (SELECT * FROM punch_item WHERE company_id = $1 AND job_id = j.id AND state = 'open' ORDER BY id LIMIT ${MOST_PUNCH_ITEMS}) AS i)
  ) AS job
  FROM due JOIN job j ON j.company_id = $1 AND j.id = due.job_id
  LEFT JOIN site s ON s.company_id = $1 AND s.id = j.site_id
  LEFT JOIN feature f ON f.company_id = $1 AND f.id = j.feature_id
)
SELECT p.id, p.name, (SELECT json_agg(job ORDER BY first, job_id) FROM jobs) AS jobs FROM person p WHERE p.company_id = $1 AND p.id = $2`;
