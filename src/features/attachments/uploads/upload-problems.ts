import { Problem } from '../../../platform/http/problem.js';

export function offsetConflict(received: number): Problem {
  return new Problem('offset-conflict', `${received} bytes of the upload are here. Ask with HEAD, and go on from the Upload-Offset that it gives.`);
}

/** What the library says in a line of text, as a problem of ours. */
export function fromProtocol(status: number, words: string): Problem {
  const said = words.trim().replace(/\.$/, '');
  switch (status) {
    case 404:
      return new Problem('not-found', 'There is no upload with this id. Check the id, or begin a new one.');
    case 409:
      return new Problem('offset-conflict', 'The Upload-Offset is not where the upload stands. Ask with HEAD, and go on from the Upload-Offset that it gives.');
    case 410:
      return new Problem('upload-expired', 'The upload was not finished in time. Begin a new one.');
    case 412:
      return new Problem('protocol-version', 'Send the header "Tus-Resumable: 1.0.0".', [], { 'tus-version': '1.0.0' });
    case 413:
      return new Problem('body-too-large', `The file is larger than may be sent, or more came than its Upload-Length says (${said}).`);
    default:
      return new Problem('malformed-request', `The request is none of the upload protocol: ${said || 'it could not be read'}. See tus.io, version 1.0.0.`);
  }
}
