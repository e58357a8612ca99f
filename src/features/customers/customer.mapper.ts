import type { CustomerEntity } from './customer.entity.js';
import type { CustomerBody, CustomerView } from './customers.dto.js';

export function toCustomerView(row: CustomerEntity): CustomerView {
  const { id, name, email, phone, billingAddress, concerns } = row;
  return { id, name, email, phone, billingAddress, concerns, createdAt: row.createdAt.toISOString() };
}

/** The customer as the request that would make it: what a patch is merged into. */
export function toCustomerBody({ name, email, phone, billingAddress, concerns }: CustomerEntity): CustomerBody {
  return { name, email, phone, billingAddress, concerns };
}

export function toCustomerRow(body: CustomerBody): Pick<CustomerEntity, 'name' | 'email' | 'phone' | 'billingAddress' | 'concerns'> {
  return { name: body.name, email: body.email ?? null, phone: body.phone ?? null, billingAddress: body.billingAddress ?? null, concerns: body.concerns ?? null };
}
