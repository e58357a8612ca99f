import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** Who asks for the work and pays for it. */
@Entity('customer')
export class CustomerEntity extends ResourceEntity {
  @Column({ type: 'text' })
  name: string;

  @Column({ type: 'text', nullable: true })
  email: string | null;

  @Column({ type: 'text', nullable: true })
  phone: string | null;

  @Column({ name: 'billing_address', type: 'text', nullable: true })
  billingAddress: string | null;

  @Column({ type: 'text', nullable: true })
  concerns: string | null;
}
