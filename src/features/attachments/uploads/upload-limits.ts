const MIB = 1024 * 1024;

/** What may be attached, by what its bytes are, and the most bytes of each. */
export const MOST_BYTES = { 'image/jpeg': 20 * MIB, 'image/png': 20 * MIB, 'image/webp': 20 * MIB, 'image/heic': 20 * MIB, 'application/pdf': 10 * MIB } as const;
export type MediaType = keyof typeof MOST_BYTES;
export const MEDIA_TYPES = Object.keys(MOST_BYTES) as MediaType[];

/** The type is known only when the file is there: what goes beyond every limit is refused before. */
export const LARGEST_UPLOAD = Math.max(...Object.values(MOST_BYTES));

/** A week away without signal must not cost a photo that was half sent. */
export const UPLOAD_DAYS = 7;
/** Of one person, unfinished. A phone sends one after the other; this many are a fault or a flood. */
export const MOST_OPEN_UPLOADS = 100;
/** Of one person, attached to nothing yet: some 400 photos as phones take them. What is attached has no limit. */
export const MOST_WAITING_BYTES = 2048 * MIB;
