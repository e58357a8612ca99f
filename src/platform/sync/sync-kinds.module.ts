import { Global, Module } from '@nestjs/common';
import { MutationKinds } from './mutation-kinds.js';
import { SyncedKinds } from './synced-kinds.js';

@Global()
@Module({ providers: [MutationKinds, SyncedKinds], exports: [MutationKinds, SyncedKinds] })
export class SyncKindsModule {}
