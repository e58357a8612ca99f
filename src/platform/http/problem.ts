/** Where in the request something is wrong, and what to do about it. The pointer follows RFC 6901. */
export interface Violation {
  readonly pointer: string;
  readonly detail: string;
}

/** A failure that the client is told of, as RFC 9457 problem details. */
export class Problem extends Error {
  constructor(
    readonly code: ProblemCode,
    readonly detail: string,
    readonly errors: readonly Violation[] = [],
    readonly headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
  }

  get status(): number {
    return PROBLEMS[this.code].status;
  }

  get title(): string {
    return PROBLEMS[this.code].title;
  }
}

/** Every kind of failure that the API knows; `code` and `type` never change once published. */
export const PROBLEMS = {
  'malformed-request': { status: 400, title: 'The request could not be read' },
  'invalid-input': { status: 400, title: 'The request has fields that are not as they must be' },
  'not-signed-in': { status: 401, title: 'A valid access token is needed' },
  'sign-in-failed': { status: 401, title: 'The e-mail address or the password is wrong' },
  'session-ended': { status: 401, title: 'The session has ended' },
  'enrolment-refused': { status: 401, title: 'The enrolment code is not valid' },
  'device-unknown': { status: 401, title: 'The credential of the device is not valid' },
  'device-revoked': { status: 401, title: 'The device was shut out' },
  'not-allowed': { status: 403, title: 'This role may not do that' },
  'not-found': { status: 404, title: 'There is no such thing' },
  'method-not-allowed': { status: 405, title: 'This address does not take that method' },
  'not-acceptable': { status: 406, title: 'This form of answer is not to be had' },
  'id-taken': { status: 409, title: 'The id was used before with another body' },
  'already-there': { status: 409, title: 'Something with this value is there already' },
  'state-conflict': { status: 409, title: 'The state of the thing does not allow that' },
  'time-overlap': { status: 409, title: 'The person is already logged for that time' },
  'dependency-missing': { status: 409, title: 'What it depends on was not applied yet' },
  'dependency-failed': { status: 409, title: 'What it depends on was not applied' },
  'offset-conflict': { status: 409, title: 'The upload goes on at another place' },
  'period-locked': { status: 409, title: 'The hours of that day are locked' },
  'company-choice': { status: 409, title: 'The address belongs to people of several companies' },
  'cursor-expired': { status: 410, title: 'The cursor can not be followed any more' },
  'upload-expired': { status: 410, title: 'The upload was not finished in time' },
  'stale-version': { status: 412, title: 'Somebody changed it in the meantime' },
  'protocol-version': { status: 412, title: 'The request does not say which protocol of uploads it speaks' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'wrong-media-type': { status: 415, title: 'The body has the wrong media type' },
  'range-not-satisfiable': { status: 416, title: 'There are no such bytes' },
  'no-such-reference': { status: 422, title: 'The request names something that is not there' },
  'unknown-kind': { status: 422, title: 'The service does not know this kind' },
  'not-possible': { status: 422, title: 'The request is well formed but can not be carried out' },
  'version-required': { status: 428, title: 'The change must say which version it is for' },
  'too-many-attempts': { status: 429, title: 'Too many attempts' },
  'checksum-mismatch': { status: 460, title: 'What arrived is not what was sent' },
  'unexpected': { status: 500, title: 'Something went wrong on our side' },
  'unavailable': { status: 503, title: 'The service can not answer just now' },
} as const satisfies Record<string, { status: number; title: string }>;

export type ProblemCode = keyof typeof PROBLEMS;

export interface ProblemBody {
  type: string;
  title: string;
  status: number;
  detail: string;
  instance: string;
  code: ProblemCode;
  errors: readonly Violation[];
}

export function problemBody(problem: Problem, instance: string): ProblemBody {
  const { code, title, status, detail, errors } = problem;
  return { type: `urn:rillbook:problem:${code}`, title, status, detail, instance, code, errors };
}
