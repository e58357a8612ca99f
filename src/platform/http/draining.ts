import { Injectable } from '@nestjs/common';

/** Whether the service is about to stop: it still finishes what it has begun, but asks for no more. */
@Injectable()
export class Draining {
  private begun = false;

  get active(): boolean {
    return this.begun;
  }

  begin(): void {
    this.begun = true;
  }
}
