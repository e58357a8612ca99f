import { Decimal } from '../../domain/decimal.js';
import { type Actor, seesMoney } from '../../platform/auth/actor.js';
import type { PersonBody, PersonView } from './people.dto.js';
import type { PersonEntity } from './person.entity.js';

export function toPersonView(actor: Actor, row: PersonEntity): PersonView {
  const view: PersonView = { id: row.id, name: row.name, role: row.role, active: row.active, createdAt: row.createdAt.toISOString() };
  if (!seesMoney(actor)) return view;
  const { email, hourlyWage, burdenPercent } = toPersonBody(row);
  return { ...view, email, phone: row.phone, hourlyWage, burdenPercent };
}

/** The person as the request that would make it: what a patch is merged into. */
export function toPersonBody(row: PersonEntity): PersonBody {
  return {
    name: row.name,
    email: row.email,
    phone: row.phone,
    role: row.role,
    active: row.active,
    hourlyWage: row.hourlyWage.toFixed(Math.max(2, row.hourlyWage.decimalPlaces())),
    burdenPercent: row.burdenPercent.toFixed(),
  };
}

export function toPersonRow(body: PersonBody): Pick<PersonEntity, 'name' | 'email' | 'phone' | 'role' | 'active' | 'hourlyWage' | 'burdenPercent'> {
  return {
    name: body.name,
    email: body.email,
    phone: body.phone ?? null,
    role: body.role,
    active: body.active ?? true,
    hourlyWage: new Decimal(body.hourlyWage),
    burdenPercent: new Decimal(body.burdenPercent),
  };
}
