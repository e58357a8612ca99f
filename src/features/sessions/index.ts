export { SessionsModule } from './sessions.module.js';
export { DeviceSessions } from './device-sessions.js';
export { deviceRevoked } from './refusals.js';
export { SetPassword } from './set-password.js';
export { PasswordBody } from './passwords.dto.js';
export { SessionView } from './sessions.dto.js';
