import type sharp from 'sharp';

let library: Promise<typeof sharp> | null = null;

/** The image library, set up once. It comes with the first photo: it takes 24 MiB, and many a service sees no photo for days. */
export function imageLibrary(): Promise<typeof sharp> {
  return (library ??= load());
}

async function load(): Promise<typeof sharp> {
  const { default: loaded } = await import('sharp');
  // What is none of these never reaches the many other decoders of the library; of HEIC it reads the head alone.
  loaded.block({ operation: ['VipsForeignLoad'] });
  loaded.unblock({ operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer', 'VipsForeignLoadHeifBuffer'] });
  loaded.cache(false);
  // One processor is for everybody else.
  loaded.concurrency(1);
  return loaded;
}
