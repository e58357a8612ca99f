import type { AttachmentEntity } from './attachment.entity.js';
import type { AttachmentView, SubjectBody, SubjectKind } from './attachments.dto.js';

type SubjectColumn = 'jobId' | 'featureId' | 'equipmentId' | 'costId';

const COLUMN_OF: Readonly<Record<SubjectKind, SubjectColumn>> = { job: 'jobId', feature: 'featureId', equipment: 'equipmentId', cost: 'costId' };

export function toAttachmentView(row: AttachmentEntity): AttachmentView {
  const { id, kind, caption, attachedBy, mediaType, width, height, voidReason } = row;
  return {
    id, subject: subjectOf(row), kind, caption,
    takenAt: row.takenAt?.toISOString() ?? null,
    attachedBy, mediaType,
    size: row.fileSize,
    sha256: row.fileSha256.toString('hex'),
    width, height,
    hasThumbnail: row.thumbnailSha256 !== null,
    voidedAt: row.voidedAt?.toISOString() ?? null,
    voidReason,
    createdAt: row.createdAt.toISOString(),
  };
}

/** The columns that say what it belongs to: one of four. */
export function subjectColumns({ kind, id }: SubjectBody): Record<SubjectColumn, string | null> {
  return { jobId: null, featureId: null, equipmentId: null, costId: null, [COLUMN_OF[kind]]: id.toLowerCase() };
}

function subjectOf(row: AttachmentEntity): SubjectBody {
  for (const [kind, column] of Object.entries(COLUMN_OF) as [SubjectKind, SubjectColumn][]) {
    const id = row[column];
    if (id !== null) return { kind, id };
  }
  throw new Error(`The attachment ${row.id} belongs to nothing.`);
}
