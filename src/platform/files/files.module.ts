import { Global, Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { FileStore } from './file-store.js';
import { StoredFileEntity } from './stored-file.entity.js';

@Global()
@Module({ imports: [TypeOrmModule.forFeature([StoredFileEntity])], providers: [FileStore], exports: [FileStore] })
export class FilesModule {}
