export { SessionsModule } from './sessions.module.js';
export { SetPassword } from './set-password.js';
export { PasswordBody } from './passwords.dto.js';
