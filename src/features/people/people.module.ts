import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { PeopleController } from './people.controller.js';
import { PeopleService } from './people.service.js';
import { PersonEntity } from './person.entity.js';

@Module({ imports: [TypeOrmModule.forFeature([PersonEntity])], controllers: [PeopleController], providers: [PeopleService], exports: [PeopleService] })
export class PeopleModule {}
