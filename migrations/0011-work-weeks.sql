-- What an hour really costs: when a workweek begins, when overtime is due, what is paid on top of wages.

CREATE TABLE work_week_policy (
  company_id uuid NOT NULL CONSTRAINT fk_work_week_policy__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  made_order bigint NOT NULL GENERATED ALWAYS AS IDENTITY,
  starts_on text NOT NULL CONSTRAINT ck_work_week_policy__starts_on CHECK (starts_on IN ('monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday')),
  starts_at text NOT NULL CONSTRAINT ck_work_week_policy__starts_at CHECK (starts_at ~ '^([01][0-9]|2[0-3]):[0-5][0-9]$'),
  weekly_overtime_hours numeric(7, 4) NOT NULL CONSTRAINT ck_work_week_policy__weekly_overtime_hours CHECK (weekly_overtime_hours BETWEEN 0 AND 169),
  daily_overtime_hours numeric(7, 4) CONSTRAINT ck_work_week_policy__daily_overtime_hours CHECK (daily_overtime_hours BETWEEN 0 AND 25),
  effective_from date NOT NULL,
  CONSTRAINT pk_work_week_policy PRIMARY KEY (company_id, id)
);
CALL make_tenant_table('work_week_policy');
COMMENT ON COLUMN work_week_policy.starts_at IS 'local time in the zone of the company; alike in all policies of a company, as is starts_on';

CREATE TABLE burden_rate (
  company_id uuid NOT NULL CONSTRAINT fk_burden_rate__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  made_order bigint NOT NULL GENERATED ALWAYS AS IDENTITY,
  code text NOT NULL,
  name text NOT NULL,
  percent numeric(9, 4) NOT NULL CONSTRAINT ck_burden_rate__percent CHECK (percent >= 0),
  yearly_wage_cap numeric(19, 4) CONSTRAINT ck_burden_rate__yearly_wage_cap CHECK (yearly_wage_cap >= 0),
  base text NOT NULL CONSTRAINT ck_burden_rate__base CHECK (base IN ('all-pay', 'straight-pay')),
  effective_from date NOT NULL,
  CONSTRAINT pk_burden_rate PRIMARY KEY (company_id, id)
);
CREATE INDEX ix_burden_rate__in_force ON burden_rate (company_id, code, effective_from DESC, made_order DESC);
CALL make_tenant_table('burden_rate');
COMMENT ON COLUMN burden_rate.percent IS 'of wages; 0 ends the rate of the same code from effective_from on';
