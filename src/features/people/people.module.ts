import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { PeopleController } from './people.controller.js';
import { PeopleService } from './people.service.js';
import { PersonSync } from './person-sync.js';
import { PersonEntity } from './person.entity.js';

@Module({ imports: [TypeOrmModule.forFeature([PersonEntity])], controllers: [PeopleController], providers: [PeopleService, PersonSync], exports: [PeopleService] })
export class PeopleModule {}
