import { Injectable } from '@nestjs/common';

/**
 * Where the service is in its life. While it starts it already answers, but says that it is not ready; before it stops
 * it finishes what it has begun, and asks for no more.
 */
@Injectable()
export class Lifecycle {
  private phase: 'starting' | 'serving' | 'draining' = 'serving';

  get ready(): boolean {
    return this.phase === 'serving';
  }

  get draining(): boolean {
    return this.phase === 'draining';
  }

  enter(phase: 'starting' | 'serving' | 'draining'): void {
    // What has begun to drain never serves again.
    if (this.phase !== 'draining') this.phase = phase;
  }
}
