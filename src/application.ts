/**
 * All that takes long to load, behind one door: the start opens it while the database boots. Loading the application
 * takes about as long as making a new database, and neither needs the other.
 */
export { createApp } from './create-app.js';
export { Demonstration } from './features/demonstration/index.js';
export { provision } from './platform/database/provision.js';
export { Lifecycle } from './platform/http/lifecycle.js';
export { serveReference } from './platform/http/reference.js';
