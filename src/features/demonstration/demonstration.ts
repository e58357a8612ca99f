import { Injectable } from '@nestjs/common';

/** placeholder until the seed lands */
@Injectable()
export class Demonstration {
  seedWhenEmpty(_password: string | null, _say: (line: string) => void): Promise<{ email: string; role: string; password: string }[] | null> {
    return Promise.resolve(null);
  }
}
