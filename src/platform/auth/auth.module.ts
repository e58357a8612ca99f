import { type DynamicModule, Global, Module } from '@nestjs/common';
import { AccessTokens } from './access-tokens.js';
import { Bearer } from './bearer.js';
import { Passwords } from './passwords.js';

@Global()
@Module({})
export class AuthModule {
  static withKey(signingKeyPem: string): DynamicModule {
    return {
      module: AuthModule,
      providers: [Passwords, Bearer, { provide: AccessTokens, useFactory: () => new AccessTokens(signingKeyPem) }],
      exports: [Passwords, AccessTokens, Bearer],
    };
  }
}
