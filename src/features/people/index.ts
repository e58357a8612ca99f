export { PeopleModule } from './people.module.js';
export { PeopleService } from './people.service.js';
export type { PersonEntity } from './person.entity.js';
export { PersonBody } from './people.dto.js';
