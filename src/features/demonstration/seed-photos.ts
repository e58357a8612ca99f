import { Injectable } from '@nestjs/common';
import { AttachBytes } from '../attachments/index.js';
import { PHOTOS } from './content/photos.js';
import { drawPhoto } from './draw-photo.js';
import type { Scene } from './scene.js';

/** The crew's photos of their jobs. */
@Injectable()
export class SeedPhotos {
  constructor(private readonly attach: AttachBytes) {}

  async execute(scene: Scene): Promise<void> {
    for (const { name, quote, by, daysAgo, at, caption, ...picture } of PHOTOS) {
      const taken = scene.calendar.moment(daysAgo, at);
      const bytes = await drawPhoto(picture);
      await scene.on(taken, () =>
        this.attach.execute(scene.as(by), bytes, {
          id: scene.newId(`photo ${name}`, taken), uploadId: scene.newId(`upload ${name}`, taken),
          subject: { kind: 'job', id: scene.id(`job ${quote}`) }, kind: 'photo', caption, takenAt: taken.toISOString(),
        }),
      );
    }
  }
}
